package slopewright.drawing.internal.layout;

import java.util.List;

import slopewright.drawing.scene.Mark;
import slopewright.drawing.scene.Style;

/** Enlarges letters, symbols and lines of marks whose places stay where they are. */
public final class Lettering {

    private Lettering() {
    }

    /** Returns marks with letters, symbols and lines so many times larger. */
    public static List<Mark> enlarged(List<Mark> marks, double factor) {
        return factor == 1 ? marks : marks.stream().map(mark -> enlarged(mark, factor)).toList();
    }

    private static Mark enlarged(Mark mark, double factor) {
        if (mark instanceof Mark.Path path) {
            return new Mark.Path(path.points(), path.closed(), enlarged(path.style(), factor), path.elementId());
        }
        if (mark instanceof Mark.Disc disc) {
            return new Mark.Disc(disc.centre(), disc.radiusMm() * factor, enlarged(disc.style(), factor), disc.elementId());
        }
        Mark.Label label = (Mark.Label) mark;
        return new Mark.Label(label.at(), label.text(), label.anchor(), label.sizeMm() * factor, label.dyMm() * factor, label.ink(),
                label.elementId());
    }

    private static Style enlarged(Style style, double factor) {
        return new Style(style.line(), style.fill(), style.widthMm() * factor, style.dashed());
    }

    /** Returns marks whose labels have their middle at their place as marks whose labels have their foot there, as painters of paper do. */
    public static List<Mark> footed(List<Mark> marks) {
        return marks.stream().map(mark -> mark instanceof Mark.Label label ? new Mark.Label(label.at(), label.text(), label.anchor(),
                label.sizeMm(), label.dyMm() - label.sizeMm() / 2, label.ink(), label.elementId()) : mark).toList();
    }
}
