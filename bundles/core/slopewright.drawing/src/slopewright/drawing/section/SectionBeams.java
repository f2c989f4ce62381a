package slopewright.drawing.section;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import slopewright.drawing.scene.DrawnAid;
import slopewright.drawing.scene.Ink;
import slopewright.drawing.scene.Style;
import slopewright.geometry.FramePoint;
import slopewright.messages.Words;
import slopewright.siting.Colour;
import slopewright.siting.Light;
import slopewright.siting.LightForm;
import slopewright.siting.Meaning;
import slopewright.siting.Observation;
import slopewright.siting.SeenUnit;
import slopewright.siting.Signals;
import slopewright.siting.Siting;
import slopewright.siting.UnitPlan;

/** The beams in a section: their edges, and between them what a pilot sees there. */
final class SectionBeams {

    private static final double LAMP_MM = 0.75;
    private static final double LAMP_STEP_MM = 2;
    private static final double LEAST_SECTOR_MM = 2.6;
    private static final int MOST_LAMPS = 6;
    private static final double LETTERS_MM = 2.05;
    private static final double OUTER_MM = 9;
    private static final double FAR_OUT_M = -2000;
    private static final double FROM_EDGE_MM = 30;

    private final DrawnAid drawn;
    private final Siting siting;
    private final SectionLines lines;
    private final SectionLabels labels;
    private final List<BeamEdge> edges;

    SectionBeams(DrawnAid drawn, SectionLines lines, SectionLabels labels) {
        this.drawn = drawn;
        this.siting = drawn.siting();
        this.lines = lines;
        this.labels = labels;
        this.edges = BeamEdge.of(siting);
    }

    /** Fills where a pilot is told to be on the slope, between the edges of beams on both sides of it. */
    void corridor() {
        List<BeamEdge> rising = edges.stream().sorted(Comparator.comparingDouble(edge -> edge.heightM(FAR_OUT_M))).toList();
        for (int i = 1; i < rising.size(); i++) {
            double middle = (rising.get(i - 1).heightM(FAR_OUT_M) + rising.get(i).heightM(FAR_OUT_M)) / 2;
            if (Signals.observe(siting, new FramePoint(FAR_OUT_M, 0, middle)).meanings().containsValue(Meaning.ON_SLOPE)) {
                between(rising.get(i - 1), rising.get(i));
            }
        }
    }

    private void between(BeamEdge lower, BeamEdge upper) {
        double from = Math.min(lines.window().minAlongM(), lower.unit().place().alongM());
        FramePoint low = lower.unit().place();
        FramePoint high = upper.unit().place();
        lines.area(Style.fill(Ink.CORRIDOR), "", low.alongM(), low.heightM(), high.alongM(), high.heightM(), from, upper.heightM(from),
                from, lower.heightM(from));
    }

    void edges() {
        edges.forEach(edge -> lines.ray(Style.line(Ink.UNIT, 0.2), drawn.elementId(edge.unit()), edge.unit().place(), edge.angleDeg()));
    }

    void units() {
        for (UnitPlan unit : siting.units()) {
            FramePoint lens = unit.place();
            lines.symbol(Style.area(Ink.UNIT, Ink.PAPER, 0.3), drawn.elementId(unit), lens.alongM(), lens.heightM(), -1, -0.8, 1.4,
                    -0.8, 1.4, 0.8, -1, 0.8);
            labels.keep(lens.alongM(), lens.heightM(), 1.2, 1.6, 1);
        }
    }

    void texts() {
        sectors(lines.window().minAlongM() + FROM_EDGE_MM / lines.window().mmAlong());
        for (BeamEdge edge : edges) {
            double from = SectionLines.seenFromM(lines.window(), edge.unit().place(), edge.angleDeg());
            String name = edge.unit().edges().size() == 1 && siting.units().size() <= MOST_LAMPS ? edge.unit().id() + "  " : "";
            labels.atLine(from, edge::heightM, name + drawn.language().write(Words.deg(edge.angleDeg())), LETTERS_MM, Ink.UNIT,
                    drawn.elementId(edge.unit()));
        }
    }

    /** Draws what is seen in every sector that is high enough on the screen, above each other at one place. */
    private void sectors(double alongM) {
        SectionWindow window = lines.window();
        List<Double> heights = new ArrayList<>(edges.stream().filter(edge -> edge.unit().place().alongM() > alongM)
                .map(edge -> edge.heightM(alongM)).filter(height -> height < window.maxHeightM()).sorted().toList());
        if (heights.isEmpty()) {
            return;
        }
        heights.add(0, Math.max(Math.max(0, window.minHeightM()), heights.get(0) - OUTER_MM / window.mmUp()));
        heights.add(Math.min(window.maxHeightM(), heights.get(heights.size() - 1) + OUTER_MM / window.mmUp()));
        List<Sector> sectors = new ArrayList<>();
        for (int i = 1; i < heights.size(); i++) {
            double middle = (heights.get(i - 1) + heights.get(i)) / 2;
            if ((heights.get(i) - heights.get(i - 1)) * window.mmUp() >= LEAST_SECTOR_MM && window.holds(alongM, middle)) {
                sectors.add(new Sector(alongM, middle, Signals.observe(siting, new FramePoint(alongM, 0, middle))));
            }
        }
        sectors.sort(Comparator.comparing(sector -> !sector.seen().meanings().containsValue(Meaning.ON_SLOPE)));
        sectors.forEach(this::sector);
    }

    /** What is seen at a place between two edges. */
    private record Sector(double alongM, double heightM, Observation seen) {
    }

    private void sector(Sector sector) {
        double alongM = sector.alongM();
        double heightM = sector.heightM();
        List<SeenUnit> lamps = sector.seen().seen().stream().filter(seen -> seen.offsetMin().isEmpty())
                .sorted(Comparator.comparingDouble(seen -> seen.unit().place().rightM())).toList();
        double step = LAMP_STEP_MM / lines.window().mmAlong();
        int shown = lamps.size() > MOST_LAMPS ? 0 : lamps.size();
        if (shown > 0 && !labels.take(alongM, heightM, LAMP_MM, LAMP_STEP_MM * (shown - 1) + LAMP_MM, LAMP_MM)) {
            return;
        }
        for (int i = 0; i < shown; i++) {
            lines.disc(alongM + i * step, heightM, LAMP_MM, style(lamps.get(i).light()), "");
        }
        String meaning = String.join(" / ", sector.seen().meanings().values().stream()
                .map(told -> drawn.language().write(Words.term("drawing.meaning." + told.key()))).toList());
        if (!labels.write(alongM + Math.max(0, shown - 0.2) * step, heightM, meaning, LETTERS_MM, SectionLabels.Side.RIGHT, Ink.DIMENSION,
                "")) {
            labels.write(alongM - LAMP_MM / lines.window().mmAlong(), heightM, meaning, LETTERS_MM, SectionLabels.Side.LEFT, Ink.DIMENSION,
                    "");
        }
    }

    /** A lamp that is not steady is a ring, one without light is empty and thin. */
    private static Style style(Light light) {
        if (light.form() == LightForm.OFF || light.colour() == Colour.NONE) {
            return Style.line(Ink.DIMENSION, 0.1);
        }
        Ink ink = Ink.valueOf(light.colour().name());
        return light.form() == LightForm.STEADY ? Style.area(Ink.DIMENSION, ink, 0.12) : Style.area(ink, Ink.PAPER, 0.5);
    }
}
