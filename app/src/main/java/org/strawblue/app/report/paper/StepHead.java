package org.strawblue.app.report.paper;

/** The head of a step: its number and a box to tick in the margin, its stage, and the one instruction. */
record StepHead(int number, String stage, String lead) implements Block {

    /** Room to the left of a step's text [pt]. */
    static final double MARGIN = 34;

    private static final double BOX = 12;
    private static final double BELOW = 5;

    private Paragraph stageLine() {
        return new Paragraph(Style.STAGE, stage);
    }

    private Paragraph leadLine() {
        return new Paragraph(Style.LEAD, lead);
    }

    @Override
    public double height(Typefaces faces, double width) {
        double text = stageLine().height(faces, width) + leadLine().height(faces, width);
        return Math.max(text, Style.NUMBER.leading() + BOX) + BELOW;
    }

    @Override
    public void draw(Pencil pencil, Typefaces faces, double x, double y, double width) {
        double stage = stageLine().height(faces, width);
        pencil.text(Integer.toString(number), x - MARGIN, y + Style.NUMBER.size() - 4, true, Style.NUMBER.size(), 1);
        pencil.frame(x - MARGIN + 1, y + Style.NUMBER.leading(), BOX, BOX, 0.8);
        stageLine().draw(pencil, faces, x, y, width);
        leadLine().draw(pencil, faces, x, y + stage, width);
    }

    @Override
    public boolean keepWithNext() {
        return true;
    }
}
