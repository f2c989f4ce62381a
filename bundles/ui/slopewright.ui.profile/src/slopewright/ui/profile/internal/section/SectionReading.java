package slopewright.ui.profile.internal.section;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

import slopewright.drawing.section.Section;
import slopewright.geometry.FramePoint;
import slopewright.geometry.ProtectionSurface;
import slopewright.model.RunwayEnd;
import slopewright.siting.Light;
import slopewright.siting.LightForm;
import slopewright.siting.Observation;
import slopewright.siting.SeenUnit;
import slopewright.siting.Signals;
import slopewright.siting.SurfacePlan;
import slopewright.ui.profile.internal.Messages;
import slopewright.ui.profile.internal.section.ReadoutPanel.Row;

/**
 * What there is to say about a place in a section.
 *
 * @param eye         the place
 * @param observation what is seen there
 * @param aboveM      its height above the obstacle surface, metres; empty where the surface does not reach
 * @param atRunway    whether heights count from a threshold
 */
public record SectionReading(FramePoint eye, Observation observation, OptionalDouble aboveM, boolean atRunway) {

    /** Reads a section at a place. */
    public static SectionReading at(Section section, FramePoint eye) {
        OptionalDouble above = section.siting().surface().map(SurfacePlan::geometry).map(surface -> above(surface, eye))
                .orElse(OptionalDouble.empty());
        return new SectionReading(eye, Signals.observe(section.siting(), eye), above, section.drawn().host() instanceof RunwayEnd);
    }

    private static OptionalDouble above(ProtectionSurface surface, FramePoint eye) {
        double outward = surface.outwardM(eye.alongM(), eye.rightM());
        return surface.contains(eye.alongM(), eye.rightM()) ? OptionalDouble.of(eye.heightM() - surface.heightAtOutwardM(outward))
                : OptionalDouble.empty();
    }

    /** Returns the lamps as the pilot sees them: rows of bars, the far one first, each from left to right. */
    public List<List<SeenUnit>> lamps() {
        Map<Integer, List<SeenUnit>> bars = new LinkedHashMap<>();
        observation.seen().stream().filter(seenUnit -> seenUnit.offsetMin().isEmpty())
                .sorted(Comparator.comparingInt((SeenUnit seenUnit) -> -seenUnit.unit().bar())
                        .thenComparingDouble(seenUnit -> seenUnit.unit().place().rightM()))
                .forEach(seenUnit -> bars.computeIfAbsent(seenUnit.unit().bar(), bar -> new ArrayList<>()).add(seenUnit));
        return List.copyOf(bars.values());
    }

    /** Returns the lines of the readout. */
    public List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        String origin = Messages.get(atRunway ? "section.read.threshold" : "section.read.hover-point");
        rows.add(Row.of(Messages.get("section.read.distance"), Messages.get(eye.alongM() <= 0 ? "section.read.before"
                : "section.read.past", ScreenWords.coarse(Math.abs(eye.alongM())), origin)));
        rows.add(Row.of(Messages.get("section.read.height"), Messages.get(eye.heightM() >= 0 ? "section.read.over" : "section.read.under",
                ScreenWords.exact(Math.abs(eye.heightM())), origin)));
        double elevation = observation.elevationDeg();
        rows.add(Row.of(Messages.get("section.read.elevation"), Double.isNaN(elevation) ? Messages.get("section.read.behind")
                : Messages.get("section.read.at-aid", ScreenWords.degrees(elevation))));
        rows.add(Row.of(Messages.get("section.read.signal"), signal()));
        rows.add(Row.of(Messages.get("section.read.meaning"), meaning()));
        rows.add(margin());
        return rows;
    }

    private Row margin() {
        String name = Messages.get("section.read.margin");
        if (aboveM.isEmpty()) {
            return Row.of(name, Messages.get("section.read.no-surface"));
        }
        double above = aboveM.getAsDouble();
        return Row.of(name, Messages.get(above > 0 ? "section.read.above" : "section.read.below", ScreenWords.exact(Math.abs(above))),
                above > 0);
    }

    /** Returns what the lights show in words, such as {@code 2 white, 2 red}. */
    public String signal() {
        List<SeenUnit> panels = observation.seen().stream().filter(seenUnit -> seenUnit.offsetMin().isPresent()).toList();
        if (!panels.isEmpty()) {
            double offset = panels.stream().mapToDouble(panel -> panel.offsetMin().getAsDouble())
                    .reduce(0, (one, other) -> Math.abs(other) > Math.abs(one) ? other : one);
            return Messages.get(offset >= 0 ? "section.read.panel-above" : "section.read.panel-below",
                    String.valueOf(Math.round(Math.abs(offset) * 10) / 10.0));
        }
        if (observation.seen().stream().allMatch(seenUnit -> Double.isNaN(seenUnit.elevationDeg()))) {
            return Messages.get("section.read.nothing");
        }
        Map<String, Integer> counts = new LinkedHashMap<>();
        lamps().stream().flatMap(List::stream).forEach(seenUnit -> counts.merge(words(seenUnit.light()), 1, Integer::sum));
        boolean isSingle = counts.size() == 1 && counts.containsValue(1);
        return isSingle ? counts.keySet().iterator().next()
                : String.join(", ", counts.entrySet().stream().map(entry -> entry.getValue() + " " + entry.getKey()).toList());
    }

    static String words(Light light) {
        if (light.form() == LightForm.OFF) {
            return Messages.get("section.light.none");
        }
        String colour = Messages.get("section.light." + light.colour().key());
        return light.form() == LightForm.STEADY ? colour : Messages.get("section.light." + light.form().key(), colour);
    }

    /** Returns what the signal tells. */
    public String meaning() {
        return String.join("; ", observation.meanings().entrySet().stream().map(path -> {
            String text = Messages.get("section.meaning." + path.getValue().key());
            return path.getKey().isEmpty() ? text : Messages.get("section.meaning.path", Messages.get("section.path." + path
                    .getKey()), text);
        }).toList());
    }
}
