package org.strawblue.core.history;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class TraceTest {

    @Test
    void stagesFollowOneAnother() {
        Trace trace = Trace.ramp(300, 500, 60).then(Trace.hold(500, 600)).then(Trace.ramp(480, 300, 30));
        assertThat(trace.duration()).isCloseTo(690, within(0.01));
        assertThat(trace.peak()).isEqualTo(500);
        assertThat(trace.size()).isEqualTo(6);
        assertThat(trace.kelvin(4)).isEqualTo(480);
        assertThat(trace.second(5)).isCloseTo(690, within(0.01));
    }

    @Test
    void aTraceCannotBeChangedFromOutside() {
        double[] seconds = {0, 10};
        Trace trace = new Trace(seconds, new double[] {300, 400});
        seconds[1] = -1;
        trace.kelvin()[0] = -1;
        trace.seconds()[0] = -1;
        assertThat(trace.second(1)).isEqualTo(10);
        assertThat(trace.kelvin(0)).isEqualTo(300);
        assertThat(trace.second(0)).isZero();
    }

    @Test
    void timesThatDoNotRiseAreRefused() {
        assertThatThrownBy(() -> Trace.hold(400, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Trace(new double[] {0}, new double[] {1}))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new ThermalHistory(java.util.Map.of())).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void anEvenHistoryIsTheSameAtCoreAndSurface() {
        ThermalHistory history = ThermalHistory.even(Trace.hold(500, 3600));
        assertThat(history.at(Place.CORE)).isEqualTo(history.at(Place.SURFACE));
        assertThat(history.at(Place.TOP)).isEmpty();
    }
}
