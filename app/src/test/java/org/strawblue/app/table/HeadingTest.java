package org.strawblue.app.table;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.strawblue.core.quantity.Unit;

/** Headings as other programs and people write them. */
class HeadingTest {

    @ParameterizedTest
    @CsvSource({
        "temperature,temperature,",
        "Temperature,temperature,",
        "temp,temperature,",
        "T,temperature,",
        "t,time,",
        "temperature_c,temperature,°C",
        "temp_c,temperature,°C",
        "temp_f,temperature,°F",
        "temperature (C),temperature,°C",
        "temperature (°F),temperature,°F",
        "Temperature [K],temperature,K",
        "Tempering temperature (ºC),temperature,°C",
        "temperature_K,temperature,K",
        "temperature degC,temperature,°C",
        "time,time,",
        "time_s,time,s",
        "time_h,time,h",
        "tempers,tempers,",
        "time (h),time,h",
        "time (hours),time,h",
        "Tempering time (s),time,s",
        "time_min,time,min",
        "Hold time [min],time,min",
        "as_quenched,as_quenched,",
        "as_quenched_hrc,as_quenched,HRC",
        "hrc_as_quenched,as_quenched,",
        "As-quenched hardness (HRC),as_quenched,HRC",
        "Initial hardness (HRC) - post quenching,as_quenched,HRC",
        "C,C,",
        "c,C,",
        "Mn,Mn,",
        "Mn_pct,Mn,",
        "mn (%),Mn,",
        "C (%wt),C,",
        "Cr (wt%),Cr,",
        "%Mo,Mo,",
        "carbon,C,",
        "grade,grade,",
        "Steel type,grade,",
        "light,light,",
    })
    void areUnderstood(String text, String column, String unit) {
        Heading heading = Heading.read(text).orElseThrow();
        assertThat(heading.column()).isEqualTo(column);
        assertThat(heading.unit().map(Unit::symbol).orElse(null)).isEqualTo(unit);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "row",
                "heat_id",
                "source",
                "hrc_tempered",
                "P_pct",
                "S",
                "hrc",
                "remarks",
                "",
                "temperature_mm",
                "Final hardness (HRC) - post tempering"
            })
    void ofOtherThingsAreLeftAlone(String text) {
        assertThat(Heading.read(text)).isEmpty();
    }

    @Test
    void theNearestIsOffered() {
        assertThat(Heading.nearest("temperture")).contains("temperature");
    }
}
