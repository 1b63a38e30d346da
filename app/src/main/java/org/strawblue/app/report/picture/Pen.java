package org.strawblue.app.report.picture;

/**
 * How a line is drawn or a field filled, all in the ink of the page so that it reads on light and dark ground alike.
 *
 * @param width of the line, 0 for none
 * @param stroke how strong the line's ink is, 0 to 1
 * @param fill how strong the ink of the field is, 0 to 1
 * @param dash lengths of stroke and gap, empty for an unbroken line
 */
public enum Pen {
    OUTLINE(1.4, 1, 0),
    CURVE(1.6, 1, 0),
    THIN(0.6, 0.85, 0),
    GRID(0.5, 0.16, 0),
    HATCH(0.5, 0.55, 0),
    LIMIT(0.9, 0.85, 0, 5, 3),
    CENTRE(0.6, 0.6, 0, 10, 2.5, 2, 2.5),
    BAND(0, 0, 0.13),
    WANTED(0, 0, 0.09),
    ARROW(0, 0, 0.9),
    POINT(1.2, 1, 1),
    WIRE(0.8, 0.85, 0),
    SECTION(0.9, 1, 0.32),
    METAL(0, 0, 0.07);

    private final double width;
    private final double stroke;
    private final double fill;
    private final double[] dash;

    Pen(double width, double stroke, double fill, double... dash) {
        this.width = width;
        this.stroke = stroke;
        this.fill = fill;
        this.dash = dash;
    }

    public double width() {
        return width;
    }

    public double stroke() {
        return stroke;
    }

    public double fill() {
        return fill;
    }

    public double[] dash() {
        return dash.clone();
    }
}
