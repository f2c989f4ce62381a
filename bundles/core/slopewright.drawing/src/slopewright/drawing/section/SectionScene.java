package slopewright.drawing.section;

import java.util.ArrayList;
import java.util.List;

import slopewright.drawing.internal.layout.Lettering;
import slopewright.drawing.scene.DrawnAid;
import slopewright.drawing.scene.Frame;
import slopewright.drawing.scene.PaperArea;
import slopewright.drawing.scene.Scene;
import slopewright.drawing.scene.TextWidth;
import slopewright.evaluation.AidRequests;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Words;

/** The {@link Section} on paper, with the wheels of the most demanding aeroplanes. */
public final class SectionScene {

    /** Height of a section in a document; its width is that of the area. */
    private static final double DOCUMENT_HEIGHT_MM = 78;

    private SectionScene() {
    }

    /**
     * Draws the section as far out as the obstacles that count.
     *
     * @param drawn the aid
     * @return the scene
     */
    public static Scene of(DrawnAid drawn) {
        return of(drawn, PaperArea.usual());
    }

    /**
     * Draws the section for an area on paper, at least as far out as the obstacles that count.
     *
     * @param drawn the aid
     * @param area  the area
     * @return the scene
     * @throws IllegalArgumentException where the area has a scale at which it does not fit
     */
    public static Scene of(DrawnAid drawn, PaperArea area) {
        Section section = section(drawn);
        return scene(section, area, section.whole(1, 1), drawn.say("drawing.section.title", Words.name(drawn.name())));
    }

    /**
     * Draws the section close to the threshold or hover point, with the heights over it.
     *
     * @param drawn the aid
     * @return the scene
     */
    public static Scene near(DrawnAid drawn) {
        return near(drawn, PaperArea.usual());
    }

    /**
     * Draws the section close to the threshold or hover point for an area on paper.
     *
     * @param drawn the aid
     * @param area  the area
     * @return the scene
     * @throws IllegalArgumentException where the area has a scale at which it does not fit
     */
    public static Scene near(DrawnAid drawn, PaperArea area) {
        Section section = section(drawn);
        return scene(section, area, section.near(1, 1), drawn.say("drawing.near.title", drawn.origin(), Words.name(drawn.name())));
    }

    private static Section section(DrawnAid drawn) {
        return new Section(drawn, AidRequests.mostDemanding(drawn.host()), TextWidth::mm);
    }

    private static Scene scene(Section section, PaperArea area, SectionWindow needed, String title) {
        PaperArea.Fit fit = fit(area, new Frame(needed.minAlongM(), needed.minHeightM(), needed.maxAlongM(), needed.maxHeightM()));
        Frame frame = fit.frame();
        double widthMm = area.letteredWidthMm();
        SectionWindow window = new SectionWindow(frame.minX(), frame.minY(), frame.maxX(), frame.maxY(), widthMm,
                widthMm / frame.width() * frame.height() * fit.exaggeration());
        Section.OnPaper drawing = section.onPaper(window);
        List<String> captions = new ArrayList<>(List.of(caption(section.drawn(), fit.exaggeration())));
        captions.addAll(drawing.notes());
        return section.told(new Scene(title, frame.minX(), frame.minY(), frame.maxX(), frame.maxY(), fit.exaggeration(),
                Lettering.enlarged(Lettering.footed(drawing.marks()), area.lettering()), captions, drawing.legend()), drawing);
    }

    private static PaperArea.Fit fit(PaperArea area, Frame needed) {
        if (area.isFilled()) {
            return area.section(needed);
        }
        double fitting = DOCUMENT_HEIGHT_MM / (needed.height() * area.widthMm() / needed.width());
        double exaggeration = Math.max(1, Math.floor(fitting * 2) / 2);
        double width = Math.max(needed.width(), needed.height() * exaggeration * area.widthMm() / DOCUMENT_HEIGHT_MM);
        double height = DOCUMENT_HEIGHT_MM * width / area.widthMm() / exaggeration;
        double right = (width - needed.width()) / 2;
        return new PaperArea.Fit(new Frame(needed.minX() - right, needed.minY(), needed.maxX() + right, needed.minY() + height),
                exaggeration);
    }

    private static String caption(DrawnAid drawn, double exaggeration) {
        Argument meht = Message.of(drawn.atRunway() ? "drawing.meht" : "drawing.eye-there", Words.m(drawn.siting().mehtM()));
        return drawn.say("drawing.section.caption", Words.number(exaggeration), drawn.origin(), Words.deg(drawn.siting().slopeDeg()),
                Words.deg(drawn.siting().lowestOnSlopeDeg()), meht);
    }
}
