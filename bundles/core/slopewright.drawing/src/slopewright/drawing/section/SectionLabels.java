package slopewright.drawing.section;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.Mark;
import slopewright.drawing.scene.Mark.Anchor;
import slopewright.drawing.scene.ScenePoint;
import slopewright.drawing.scene.Style;
import slopewright.drawing.scene.TextMeasure;

/** Finds room for the texts of a section, the first asked for first; whoever asks hears whether there was any. */
final class SectionLabels {

    /** Where a text may stand beside its place. */
    enum Side {
        /** Above to the right, then further around. */
        ABOVE_RIGHT(true, new double[][] {{1, 1.2}, {-1, 1.2}, {1, -2.8}, {-1, -2.8}, {0, 2}, {0, 5}, {0, 8}, {0, 11}, {0, 14}}),
        /** Below to the left, then further around. */
        BELOW_LEFT(true, new double[][] {{-1, -2.8}, {1, -2.8}, {-1, 1.2}, {1, 1.2}, {0, -6}, {0, -9}, {0, -12}, {0, -15}}),
        /** Straight above, each step higher with a leader. */
        ABOVE(true, new double[][] {{0, 1.4}, {1, 0.2}, {-1, 0.2}, {1, 2.6}, {1, -2.8}, {-1, 2.6}, {0, 4.2}, {0, 7}, {0, 9.8}, {1, -5.6},
            {0, 12.6}, {0, 15.4}, {0, 18.2}, {0, 21}, {0, 23.8}, {0, 26.6}, {0, 29.4}, {0, 32.2}, {0, 35}, {0, 37.8}, {0, 40.6}}),
        /** Just above or below a line that comes in from the left. */
        BESIDE_LINE(true, new double[][] {{1, 0.5}, {1, 1.4}, {1, -3.4}, {1, -4.4}}),
        /** To the right only. */
        RIGHT(false, new double[][] {{1, -0.8}}),
        /** To the left only. */
        LEFT(false, new double[][] {{-1, -0.8}});

        private final boolean besideLines;
        private final double[][] spots;

        Side(boolean besideLines, double[][] spots) {
            this.besideLines = besideLines;
            this.spots = spots;
        }
    }

    /** What a text keeps clear of, each with what comes after it: lines, and with its leader other texts. */
    private enum Care {
        LINES, TEXTS, NONE
    }

    private static final double CLEAR_MM = 0.4;
    private static final double BESIDE_MM = 1;
    private static final double LEADER_MM = 3;
    /** How much of a line is seen before it is broken. */
    private static final double ENTRY_MM = 4;
    private static final double INWARD_STEP_MM = 1.5;
    private static final double MOST_INWARD_MM = 20;
    /** Half the height that a text on a line breaks it for, of the size of the letters. */
    private static final double BROKEN = 0.75;
    /** Half the height that letters take on the screen with what belongs below and above them, of their size. */
    private static final double HALF_LETTERS = 0.95;
    /** A line of more pieces is an outline that no text can keep clear of. */
    private static final int MOST_PIECES = 12;

    private final SectionWindow window;
    private final TextMeasure measure;
    private final List<Box> taken = new ArrayList<>();
    private final List<Box> texts = new ArrayList<>();
    private final List<double[]> lines = new ArrayList<>();
    /** Lines that no text breaks: what stands there must be seen. */
    private final List<double[]> solid = new ArrayList<>();
    private final List<Mark> marks = new ArrayList<>();

    /** A rectangle in millimetres, y up. */
    private record Box(double left, double low, double right, double high) {

        boolean meets(Box other) {
            return left < other.right && right > other.left && low < other.high && high > other.low;
        }

        /** Returns whether a straight line from (x1, y1) to (x2, y2) crosses it. */
        boolean isCrossedBy(double[] line) {
            double from = Math.max(0, Math.max(entry(line[0], line[2], left, right), entry(line[1], line[3], low, high)));
            double to = Math.min(1, Math.min(exit(line[0], line[2], left, right), exit(line[1], line[3], low, high)));
            return from < to;
        }

        private static double entry(double from, double to, double least, double most) {
            return from == to ? from >= least && from <= most ? 0 : 2 : Math.min((least - from) / (to - from), (most - from) / (to - from));
        }

        private static double exit(double from, double to, double least, double most) {
            return from == to ? 1 : Math.max((least - from) / (to - from), (most - from) / (to - from));
        }
    }

    SectionLabels(SectionWindow window, TextMeasure measure) {
        this.window = window;
        this.measure = measure;
    }

    /** Returns the texts and leaders that found room. */
    List<Mark> marks() {
        return marks;
    }

    /** Lets texts keep clear of lines where there is a choice; where there is none they break them, but never an obstacle. */
    void avoid(List<Mark> drawn) {
        for (Mark mark : drawn) {
            if (mark instanceof Mark.Path path && path.style().line() != Ink.NONE && path.points().size() <= MOST_PIECES) {
                for (int i = 1; i < path.points().size(); i++) {
                    ScenePoint from = path.points().get(i - 1);
                    ScenePoint to = path.points().get(i);
                    double[] line = {window.xMm(from.x()), window.yMm(from.y()), window.xMm(to.x()), window.yMm(to.y())};
                    lines.add(line);
                    if (path.style().line() == Ink.OBSTACLE || path.style().line() == Ink.PENETRATION) {
                        solid.add(line);
                    }
                }
            }
        }
    }

    /** Keeps a place free of texts, millimetres around it. */
    void keep(double alongM, double heightM, double leftMm, double rightMm, double upMm) {
        double x = window.xMm(alongM);
        double y = window.yMm(heightM);
        taken.add(new Box(x - leftMm, y - upMm, x + rightMm, y + upMm));
    }

    /** Takes a place for a symbol, millimetres around it, where it is free; returns whether it was. */
    boolean take(double alongM, double heightM, double leftMm, double rightMm, double upMm) {
        double x = window.xMm(alongM);
        double y = window.yMm(heightM);
        Box box = new Box(x - leftMm, y - upMm, x + rightMm, y + upMm);
        return fits(box) && taken.add(box);
    }

    /** Writes a text beside a place; returns whether there was room. */
    boolean write(double alongM, double heightM, String text, double sizeMm, Side side, Ink ink, String id) {
        if (!window.holds(alongM, heightM)) {
            return false;
        }
        double width = measure.widthMm(text, sizeMm);
        double x = window.xMm(alongM);
        double y = window.yMm(heightM);
        return side.besideLines && writeAt(side, x, y, width, text, sizeMm, ink, id, Care.LINES)
                || writeAt(side, x, y, width, text, sizeMm, ink, id, Care.TEXTS)
                || writeAt(side, x, y, width, text, sizeMm, ink, id, Care.NONE);
    }

    /**
     * Writes a text at a line that comes in from the left, as far out as it is clear of all lines; where they lie too close for that, on
     * the line itself, which is broken for it as a contour is. Returns whether there was room.
     *
     * @param alongM  where the line comes in
     * @param heightM the height of the line at a place
     */
    boolean atLine(double alongM, DoubleUnaryOperator heightM, String text, double sizeMm, Ink ink, String id) {
        double width = measure.widthMm(text, sizeMm);
        for (double in = BESIDE_MM; in < MOST_INWARD_MM; in += INWARD_STEP_MM) {
            double at = alongM + in / window.mmAlong();
            double y = window.yMm(heightM.applyAsDouble(at));
            if (writeAt(Side.BESIDE_LINE, window.xMm(at), y, width, text, sizeMm, ink, id, Care.LINES)) {
                return true;
            }
        }
        for (double in = ENTRY_MM; in < window.widthMm() / 2; in += INWARD_STEP_MM) {
            double left = window.xMm(alongM) + in;
            double middle = window.yMm(heightM.applyAsDouble(alongM + (in + width / 2) / window.mmAlong()));
            Box box = new Box(left - CLEAR_MM, middle - sizeMm * HALF_LETTERS, left + width + CLEAR_MM, middle + sizeMm * HALF_LETTERS);
            if (fits(box)) {
                taken.add(box);
                texts.add(box);
                breakLines(box.left, box.right, middle, sizeMm);
                marks.add(new Mark.Label(window.at(left, middle), text, Anchor.START, sizeMm, 0, ink, id));
                return true;
            }
        }
        return false;
    }

    /** Breaks the lines that a text lies on, as contours are, where all of them may be. */
    private void breakLines(double left, double right, double middle, double sizeMm) {
        Box broken = new Box(left, middle - sizeMm * BROKEN, right, middle + sizeMm * BROKEN);
        if (lines.stream().anyMatch(broken::isCrossedBy) && solid.stream().noneMatch(broken::isCrossedBy)) {
            marks.add(new Mark.Path(List.of(window.at(left, broken.low), window.at(right, broken.low), window.at(right, broken.high),
                    window.at(left, broken.high)), true, Style.fill(Ink.PAPER), ""));
        }
    }

    private boolean writeAt(Side side, double x, double y, double width, String text, double sizeMm, Ink ink, String id, Care care) {
        for (double[] spot : side.spots) {
            Anchor anchor = spot[0] > 0 ? Anchor.START : spot[0] < 0 ? Anchor.END : Anchor.MIDDLE;
            double foot = y + spot[1];
            double start = x + spot[0] * BESIDE_MM;
            double left = anchor == Anchor.START ? start : anchor == Anchor.END ? start - width : start - width / 2;
            Box box = new Box(left - CLEAR_MM, foot - CLEAR_MM, left + width + CLEAR_MM, foot + sizeMm * 1.3 + CLEAR_MM);
            boolean led = spot[0] == 0 && Math.abs(spot[1]) > LEADER_MM;
            double[] leader = {x, y + Math.copySign(BESIDE_MM, spot[1]), x, spot[1] > 0 ? foot : foot + sizeMm};
            boolean crossing = led && care != Care.NONE && texts.stream().anyMatch(other -> other.isCrossedBy(leader));
            if (fits(box) && !crossing && (care != Care.LINES || lines.stream().noneMatch(box::isCrossedBy))) {
                taken.add(box);
                texts.add(box);
                if (led) {
                    marks.add(new Mark.Path(List.of(window.at(x, leader[1]), window.at(x, leader[3])), false, Style.line(ink, 0.1), id));
                    lines.add(leader);
                }
                breakLines(left - CLEAR_MM, left + width + CLEAR_MM, foot + sizeMm / 2, sizeMm);
                marks.add(new Mark.Label(window.at(start, foot + sizeMm / 2), text, anchor, sizeMm, 0, ink, id));
                return true;
            }
        }
        return false;
    }

    /** Writes a text to the left of the right edge at a height; returns whether there was room. */
    boolean beforeEdge(double heightM, String text, double sizeMm, double fromEdgeMm, Ink ink) {
        double width = measure.widthMm(text, sizeMm);
        double right = window.widthMm() - fromEdgeMm;
        double middle = window.yMm(heightM);
        Box box = new Box(right - width - CLEAR_MM, middle - sizeMm * 0.65, right + CLEAR_MM, middle + sizeMm * 0.65);
        if (!fits(box)) {
            return false;
        }
        taken.add(box);
        texts.add(box);
        breakLines(box.left, box.right, middle, sizeMm);
        marks.add(new Mark.Label(window.at(right, middle), text, Anchor.END, sizeMm, 0, ink, ""));
        return true;
    }

    /** Writes a note from the upper edge downward, in the middle; returns whether there was room. */
    boolean note(String text, double sizeMm, Ink ink) {
        double width = measure.widthMm(text, sizeMm);
        double left = Math.max(CLEAR_MM, (window.widthMm() - width) / 2);
        for (double foot = window.heightMm() - sizeMm * 2; foot > window.heightMm() / 2; foot -= sizeMm * 1.9) {
            Box box = new Box(left - CLEAR_MM, foot - CLEAR_MM, left + width + CLEAR_MM, foot + sizeMm * 1.3 + CLEAR_MM);
            if (fits(box)) {
                taken.add(box);
                texts.add(box);
                marks.add(new Mark.Label(window.at(left, foot + sizeMm / 2), text, Anchor.START, sizeMm, 0, ink, ""));
                return true;
            }
        }
        return false;
    }

    private boolean fits(Box box) {
        return box.left >= 0 && box.low >= 0 && box.right <= window.widthMm() && box.high <= window.heightMm()
                && taken.stream().noneMatch(box::meets);
    }
}
