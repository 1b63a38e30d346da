package org.strawblue.core.spring;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.strawblue.core.estimate.Finding;
import org.strawblue.core.quantity.Band;

class PocketCheckTest {

    private static final double[] NONE = {};

    private static List<Finding> of(Pocket pocket) {
        return PocketCheck.findings(pocket);
    }

    private static void stops(Pocket pocket, String what) {
        assertThat(of(pocket)).hasSize(1).allMatch(Finding.Stop.class::isInstance);
        assertThat(of(pocket).get(0).what().template()).contains(what);
    }

    @Test
    void travelMustLeaveRoom() {
        stops(Drawer.pocket(10, 0, 8, 8, NONE, NONE), "leaves no room");
    }

    @Test
    void theRodMustLeaveRoomInTheBore() {
        stops(Drawer.pocket(6, 6, 20, 5, NONE, NONE), "fills the bore");
    }

    @Test
    void forceMustRise() {
        stops(Drawer.pocket(10, 0, 20, 5, new double[] {10, 12}, new double[] {5, 8}), "fall as the spring is pressed");
    }

    /** 400 N out of an 8 mm bore 12 mm long: no round wire bears it. */
    @Test
    void tooMuchForceInTooLittleRoomIsTold() {
        stops(Drawer.pocket(8, 0, 12, 6, new double[] {300, 320}, new double[] {400, 420}), "in so little room");
    }

    @Test
    void tellsWhichWireWouldDo() {
        List<Finding> findings = of(Drawer.pocket(9.6, 4, 26, 8, new double[] {5, 10}, new double[] {12, 25}));
        assertThat(findings).hasSize(1).allMatch(Finding.Note.class::isInstance);
        Band wires = (Band) findings.get(0).what().amounts().get(0);
        assertThat(wires.low()).isBetween(0.0004, 0.0007);
        assertThat(wires.high()).isBetween(0.0008, 0.0013);
    }

    @Test
    void saysNothingWhereNothingIsAsked() {
        assertThat(of(Drawer.pocket(10, 0, 20, 5, NONE, NONE))).isEmpty();
    }
}
