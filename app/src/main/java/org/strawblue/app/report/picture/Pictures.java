package org.strawblue.app.report.picture;

import org.strawblue.app.report.AmountWriter;
import org.strawblue.core.job.Picture;

/** Draws each kind of picture a card can carry. */
public final class Pictures {

    private Pictures() {}

    public static Drawing draw(Picture picture, AmountWriter writer) {
        if (picture instanceof Picture.ColourRibbon ribbon) {
            return new RibbonDrawing(ribbon, writer).draw();
        }
        if (picture instanceof Picture.HardnessCurve curve) {
            return new HardnessDrawing(curve, writer).draw();
        }
        if (picture instanceof Picture.SpringInPocket spring) {
            return new SpringDrawing(spring, writer).draw();
        }
        if (picture instanceof Picture.SectionWarming section) {
            return new SectionDrawing(section, writer).draw();
        }
        if (picture instanceof Picture.HeatClock clock) {
            return new ClockDrawing(clock, writer).draw();
        }
        return new ForceDrawing((Picture.ForceLength) picture, writer).draw();
    }
}
