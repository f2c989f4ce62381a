package slopewright.drawing.scene;

import slopewright.messages.Message;
import slopewright.messages.Words;

/**
 * The area on paper that a scene is drawn for. An area without a height takes the shape of the scene; one with a height is filled to its
 * edges at a scale that draughtsmen use, and the scene shows as much of the surroundings as fits.
 *
 * @param widthMm   width, millimetres
 * @param heightMm  height, millimetres; zero where the scene chooses its shape
 * @param lettering how much larger letters, symbols and lines are than in a document
 * @param scale     the number N of a scale 1:N; zero chooses the largest that fits
 */
public record PaperArea(double widthMm, double heightMm, double lettering, int scale) {

    private static final double[] SERIES = {1, 1.25, 1.5, 2, 2.5, 4, 5, 7.5};
    private static final double ROUNDING = 1e-9;
    private static final double MM_PER_M = 1000;
    /** Width of a drawing in a document. */
    private static final double DOCUMENT_WIDTH_MM = 178;
    private static final double LEFT_SHARE = 0.6;

    /** Refuses an area without width. */
    public PaperArea {
        if (!(widthMm > 0) || !(heightMm >= 0) || !(lettering > 0) || scale < 0) {
            throw new IllegalArgumentException("a drawing needs an area of some width, and a scale of 1:1 or smaller");
        }
    }

    /** A part of the plane at a scale that may be another upward. */
    public record Fit(Frame frame, double exaggeration) {
    }

    /** Returns the area of a drawing in a document. */
    public static PaperArea usual() {
        return new PaperArea(DOCUMENT_WIDTH_MM, 0, 1, 0);
    }

    /** Tells whether the scene has to fill the area. */
    public boolean isFilled() {
        return heightMm > 0;
    }

    /** Returns the width in millimetres of the letters of a document. */
    public double letteredWidthMm() {
        return widthMm / lettering;
    }

    /** Returns a frame of the shape of the area around another, not to a scale. */
    public Frame shaped(Frame needed) {
        return isFilled() ? needed.atMost(widthMm / heightMm).atLeast(widthMm / heightMm) : needed;
    }

    /**
     * Fits what a plan has to show.
     *
     * @param needed what has to be seen
     * @return what is seen at the scale of the area
     * @throws IllegalArgumentException where it does not fit at the scale that was asked for; the message says which would do
     */
    public Frame plan(Frame needed) {
        double least = Math.max(needed.width() / widthMm, needed.height() / heightMm) * MM_PER_M;
        double chosen = chosen(least);
        double width = widthMm * chosen / MM_PER_M - needed.width();
        double height = heightMm * chosen / MM_PER_M - needed.height();
        return new Frame(needed.minX() - width / 2, needed.minY() - height / 2, needed.maxX() + width / 2, needed.maxY() + height / 2);
    }

    /**
     * Fits what a section has to show, with heights to a larger scale.
     *
     * @param needed what has to be seen; what is seen beside reaches further out and up
     * @return what is seen at the scales of the area
     * @throws IllegalArgumentException where it does not fit at the scale that was asked for; the message says which would do
     */
    public Fit section(Frame needed) {
        double across = needed.width() / widthMm * MM_PER_M;
        double upward = needed.height() / heightMm * MM_PER_M;
        double chosen = chosen(Math.max(across, scale > 0 ? upward : 0));
        double vertical = next(upward);
        while (vertical < chosen && !isTidy(chosen / vertical)) {
            vertical = next(vertical * (1 + 2 * ROUNDING));
        }
        chosen = Math.max(chosen, vertical);
        double width = widthMm * chosen / MM_PER_M - needed.width();
        double height = heightMm * vertical / MM_PER_M - needed.height();
        return new Fit(new Frame(needed.minX() - width * LEFT_SHARE, needed.minY(), needed.maxX() + width * (1 - LEFT_SHARE),
                needed.maxY() + height), chosen / vertical);
    }

    private double chosen(double least) {
        if (scale == 0) {
            return next(least);
        }
        if (least > scale * (1 + ROUNDING)) {
            throw new IllegalArgumentException(Message.of("drawing.too-large", Words.number(scale), Words.number(next(least))).english());
        }
        return scale;
    }

    private static boolean isTidy(double exaggeration) {
        return Math.abs(exaggeration * 2 - Math.rint(exaggeration * 2)) < ROUNDING;
    }

    /** Returns the next scale of the series that is not larger. */
    private static double next(double least) {
        double power = Math.pow(10, Math.floor(Math.log10(least)));
        for (double lead : SERIES) {
            if (lead * power >= least * (1 - ROUNDING)) {
                return lead * power;
            }
        }
        return 10 * power;
    }
}
