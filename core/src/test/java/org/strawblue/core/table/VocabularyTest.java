package org.strawblue.core.table;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class VocabularyTest {

    /** Restricted edit distances worked by hand. */
    @ParameterizedTest
    @CsvSource({"silver,silver,0", "silver,sliver,1", "kiln,kilns,1", "o1,w1,1", "abc,'',3", "gauge,gage,1"})
    void countsWhatMustChange(String a, String b, int distance) {
        assertThat(Vocabulary.distance(a, b)).isEqualTo(distance);
        assertThat(Vocabulary.distance(b, a)).isEqualTo(distance);
    }

    @Test
    void caseSpacesAndDashesDoNotCount() {
        Vocabulary<String> words = new Vocabulary<>();
        words.add("I-beam Iron", "x");
        assertThat(words.meanings("i–BEAM\u00a0iron")).containsExactly("x");
        assertThat(words.meanings("beam")).isEmpty();
        assertThat(words.nearest("i beam irn", 2)).containsExactly("I-beam Iron");
        assertThat(words.nearest("zzzzzzzz", 2)).isEmpty();
    }
}
