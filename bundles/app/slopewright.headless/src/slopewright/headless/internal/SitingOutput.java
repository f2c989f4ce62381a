package slopewright.headless.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

import slopewright.geometry.Angles;
import slopewright.geometry.Lengths;
import slopewright.messages.Message;
import slopewright.siting.Siting;
import slopewright.siting.SurfacePlan;
import slopewright.siting.UnitPlan;

/** Writes a siting as JSON and as text. */
final class SitingOutput {

    private SitingOutput() {
    }

    static ObjectNode json(SitingSource source) {
        Siting siting = source.siting();
        ObjectNode node = Json.object();
        node.put("family", siting.family());
        node.put("ruleSet", siting.ruleSet());
        node.put("edition", siting.edition());
        Json.put(node, "slopeDeg", siting.slopeDeg());
        Json.put(node, "distanceM", siting.distanceM());
        Json.put(node, "lowestOnSlopeDeg", siting.lowestOnSlopeDeg());
        Json.put(node, "eyeHeightOverThresholdM", siting.mehtM());
        Json.put(node, "nominalEyeHeightM", siting.nominalEyeHeightM());
        Json.put(node, "wheelClearanceM", siting.wheelClearanceM());
        node.put("ground", siting.ground().key());
        ArrayNode units = node.putArray("units");
        siting.units().forEach(unit -> units.add(unit(unit)));
        if (siting.surface().isPresent()) {
            node.set("obstacleSurface", surface(siting.surface().get()));
        } else {
            node.putNull("obstacleSurface");
            node.put("noObstacleSurface", siting.noSurface().map(Message::english).orElse("the rule set gives none"));
        }
        siting.level().ifPresent(level -> {
            ObjectNode solution = node.putObject("levelSolution");
            Json.put(solution, "lensHeightM", level.levelDifferenceM());
            solution.put("iterations", level.iterations());
            solution.put("stopRule", level.stopRule().english());
            Json.put(solution, "singleStepDistanceM", level.singleStepM());
        });
        ArrayNode notes = node.putArray("notes");
        notes(source).forEach(notes::add);
        ArrayNode citations = node.putArray("citations");
        siting.citations().forEach(use -> citations.add(citation(use)));
        return node;
    }

    static List<String> notes(SitingSource source) {
        List<String> notes = new ArrayList<>(source.notes());
        source.siting().notes().forEach(note -> notes.add(note.english()));
        return notes;
    }

    private static ObjectNode unit(UnitPlan unit) {
        ObjectNode node = Json.object();
        node.put("id", unit.id());
        node.put("bar", unit.bar());
        Json.put(node, "alongM", unit.place().alongM());
        Json.put(node, "rightM", unit.place().rightM());
        Json.put(node, "heightM", unit.place().heightM());
        Json.put(node, "settingDeg", unit.settingDeg());
        return node;
    }

    static ObjectNode surface(SurfacePlan surface) {
        ObjectNode node = Json.object();
        Json.put(node, "slopeDeg", surface.slopeDeg());
        Json.put(node, "startAlongM", surface.startAlongM());
        Json.put(node, "startHeightM", surface.startHeightM());
        Json.put(node, "innerEdgeM", surface.innerEdgeM());
        Json.put(node, "divergencePercent", surface.divergencePercent());
        surface.divergenceDeg().ifPresent(splay -> Json.put(node, "divergenceDeg", splay));
        Json.put(node, "lengthM", surface.lengthM());
        if (surface.clearanceM() != 0) {
            Json.put(node, "clearanceM", surface.clearanceM());
        }
        if (surface.axisTurnDeg() != 0) {
            Json.put(node, "axisTurnDeg", surface.axisTurnDeg());
        }
        return node;
    }

    private static ObjectNode citation(Siting.CitedUse use) {
        ObjectNode node = Json.object();
        node.put("name", use.name());
        Json.put(node, "value", use.value());
        node.put("unit", use.unit());
        node.put("source", use.citation().source().title().english());
        node.put("clause", use.citation().clause().english());
        node.put("provenance", use.citation().provenance().key());
        node.put("toConfirm", use.citation().toConfirm());
        if (!use.citation().note().isBlank()) {
            node.put("note", use.citation().note().english());
        }
        return node;
    }

    static void print(SitingSource source, Streams out) {
        Siting siting = source.siting();
        out.sayf("%s (%s) under %s, edition %s", source.family().name(), siting.family(), siting.ruleSet(), siting.edition());
        line(out, "Approach slope", angle(siting.slopeDeg()));
        line(out, "Distance", length(siting.distanceM()));
        line(out, "Lowest on-slope signal", angle(siting.lowestOnSlopeDeg()));
        line(out, "Eye height over threshold (MEHT)", length(siting.mehtM()));
        siting.nominalEyeHeightM().ifPresent(height -> line(out, "Nominal eye height", length(height)));
        siting.wheelClearanceM().ifPresent(clearance -> line(out, "Wheel clearance", length(clearance)));
        out.say("");
        out.sayf("%-10s %3s %11s %11s %9s %10s %9s", "Unit", "Bar", "Along m", "Right m", "Height m", "Setting °", "");
        for (UnitPlan unit : siting.units()) {
            out.sayf("%-10s %3d %11.2f %11.2f %9.2f %10.4f %9s", unit.id(), unit.bar(), unit.place().alongM(),
                    unit.place().rightM() + 0.0, unit.place().heightM() + 0.0, unit.settingDeg(), Angles.format(unit.settingDeg()));
        }
        out.say("");
        if (siting.surface().isPresent()) {
            SurfacePlan surface = siting.surface().get();
            line(out, "Obstacle surface", angle(surface.slopeDeg()) + String.format(Locale.ROOT,
                    " from %.2f m at %.2f m, inner edge %.0f m, divergence %.2f %%, length %.0f m", surface.startAlongM() + 0.0,
                            surface.startHeightM(),
                    surface.innerEdgeM(), surface.divergencePercent(), surface.lengthM()));
        } else {
            line(out, "Obstacle surface", "none: " + siting.noSurface().map(Message::english).orElse("the rule set gives none"));
        }
        notes(source).forEach(note -> out.say("Note: " + note));
        out.say("");
        out.say("Values used:");
        for (Siting.CitedUse use : siting.citations()) {
            out.sayf("  %-52s %10s %-6s %s [%s]", use.name(), plain(use.value()), use.unit(), use.citation().text(),
                    use.citation().provenance().key());
        }
        if (!siting.toConfirm().isEmpty()) {
            out.say("Values that are not published in a text that was read are to be confirmed before anyone relies on them.");
        }
    }

    private static String plain(double value) {
        return value == Math.rint(value) ? String.valueOf((long) value) : String.valueOf(value);
    }

    private static void line(Streams out, String name, String text) {
        out.sayf("%-34s %s", name, text);
    }

    static String length(double metres) {
        return String.format(Locale.ROOT, "%.2f m (%.2f ft)", metres, Lengths.metresToFeet(metres));
    }

    static String angle(double degrees) {
        return String.format(Locale.ROOT, "%.4f° (%s)", degrees, Angles.format(degrees));
    }
}
