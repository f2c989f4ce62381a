package slopewright.drawing.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.junit.jupiter.api.Test;

import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.LegendEntry;
import slopewright.drawing.scene.Mark;
import slopewright.drawing.scene.Scene;
import slopewright.drawing.scene.ScenePoint;
import slopewright.drawing.scene.Style;
import slopewright.drawing.scene.TextWidth;
import slopewright.evaluation.MadeFrom;
import slopewright.messages.MessageRenderer;
import slopewright.messages.Words;
import slopewright.model.Project;
import slopewright.model.SlopewrightFactory;

/** What stands under a drawing. */
class SheetTest {

    private static final Scene SCENE = new Scene("t", 0, 0, 100, 50, 1,
            List.of(new Mark.Disc(new ScenePoint(50, 25), 1, Style.fill(Ink.RED), "")),
            List.of("A caption that is so long that it has to be broken into more lines than one because the paper is narrow."),
            List.of(LegendEntry.line("first", Style.line(Ink.AXIS, 0.2)), LegendEntry.disc("second", Style.fill(Ink.RED))));

    private static List<Mark.Label> labels(Sheet sheet) {
        return sheet.below().stream().filter(Mark.Label.class::isInstance).map(Mark.Label.class::cast).toList();
    }

    /** Widths of the letters of Helvetica as its metrics file prints them: A 667, V 667, space 278, i 222, 1 556 thousandths. */
    @Test
    void widthsAreThoseOfTheFace() {
        double em = 1 / TextWidth.CAPITAL;
        assertEquals(0.667 * em, TextWidth.mm("A", 1), 1e-12);
        assertEquals((0.667 + 0.278 + 0.222 + 0.556) * em, TextWidth.mm("V i1", 1), 1e-12);
    }

    @Test
    void captionsAreBrokenWhereThePaperEnds() {
        Sheet sheet = Sheet.of(SCENE, 80, 200);
        List<Mark.Label> labels = labels(sheet);
        assertTrue(labels.size() > 3);
        assertTrue(labels.stream().allMatch(label -> label.at().x() + TextWidth.mm(label.text(), label.sizeMm()) <= 80), labels::toString);
        assertTrue(labels.stream().allMatch(label -> label.at().y() <= sheet.heightMm()));
        assertTrue(labels.get(0).at().y() > sheet.frame().get(1).y());
        assertEquals(SCENE.captions().get(0), String.join(" ", labels.stream().skip(2).map(Mark.Label::text).toList()));
    }

    @Test
    void aSheetKeepsToItsHeight() {
        assertEquals(60, Sheet.of(SCENE, 300, 60).heightMm(), 1e-9);
        assertTrue(Sheet.of(SCENE, 80, 500).heightMm() < 100);
    }

    @Test
    void theTitleBlockStandsAtTheFootAndCutsWhatIsTooLong() {
        Project project = SlopewrightFactory.eINSTANCE.createProject();
        project.setName("A name that no box of a title block on paper of this width can hold");
        project.setRevision("B");
        MadeFrom made = new MadeFrom("P", "B", "no date", Optional.empty(), Words.name("rules"), "rules:1st", Optional.empty());
        Sheet sheet = Sheet.of(SCENE, TitleBlock.of(project, "Layout", made, "2026-06-01", MessageRenderer.of(Locale.ENGLISH)), 120, 200);
        List<String> texts = labels(sheet).stream().map(Mark.Label::text).toList();
        assertTrue(texts.containsAll(List.of("Drawing", "Layout", "Revision", "B", "Date", "2026-06-01")), texts::toString);
        assertTrue(texts.stream().anyMatch(text -> text.startsWith("A name") && text.endsWith("...")), texts::toString);
        assertTrue(sheet.heightMm() > Sheet.of(SCENE, 120, 200).heightMm() + 17);
    }
}
