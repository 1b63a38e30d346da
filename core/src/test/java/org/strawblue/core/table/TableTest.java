package org.strawblue.core.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.strawblue.core.quantity.Units;

class TableTest {

    private static final Row ROW = new Row("t.csv", 7, Map.of("name", "O1", "carbon", "0.9", "blank", "", "odd", "x"));

    @Test
    void cellsAreReadByColumn() {
        assertThat(ROW.text("name")).isEqualTo("O1");
        assertThat(ROW.number("carbon")).isEqualTo(0.9);
        assertThat(ROW.optionalText("blank")).isEmpty();
        assertThat(ROW.optionalNumber("blank")).isEmpty();
        assertThat(ROW.optionalNumber("absent")).isEmpty();
    }

    @Test
    void aFaultNamesFileLineAndColumn() {
        assertThatThrownBy(() -> ROW.number("odd")).hasMessage("t.csv line 7, column odd: expected a number, not 'x'");
        assertThatThrownBy(() -> ROW.text("blank")).hasMessageContaining("column blank");
        assertThatThrownBy(() -> Table.of(Units.class, "none.csv")).hasMessageContaining("none.csv");
    }

    @Test
    void remarksAreNotRows() {
        assertThat(Table.of(Units.class, "units.csv").rows())
                .noneMatch(r -> r.text("dimension").startsWith("#"));
    }
}
