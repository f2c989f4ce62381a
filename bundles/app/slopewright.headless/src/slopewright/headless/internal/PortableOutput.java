package slopewright.headless.internal;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

import slopewright.evaluation.portable.BatteryEndurance;
import slopewright.evaluation.portable.HandUnit;
import slopewright.evaluation.portable.LevellingEffect;
import slopewright.evaluation.portable.PortableSetUp;
import slopewright.evaluation.portable.SightLine;
import slopewright.messages.Message;
import slopewright.model.ApproachAid;
import slopewright.model.util.Projects;
import slopewright.siting.descent.DescentSlope;
import slopewright.standards.Citation;

/** Writes the set-up of a portable unit as a JSON document. */
final class PortableOutput {

    private PortableOutput() {
    }

    static ObjectNode json(ApproachAid aid, LocalDate day, Optional<PortableSetUp> found, List<Message> reasons) {
        ObjectNode node = Json.object();
        node.put("aid", aid.getId());
        node.put("label", Projects.path(aid));
        node.put("date", day.toString());
        found.ifPresent(setUp -> fill(node, setUp));
        node.put("ready", reasons.isEmpty());
        reasons.stream().map(Message::english).forEach(node.putArray("blockers")::add);
        ArrayNode notes = node.putArray("notes");
        ArrayNode citations = node.putArray("citations");
        found.ifPresent(setUp -> {
            setUp.notes().stream().map(Message::english).forEach(notes::add);
            setUp.citations().forEach(citation -> citations.add(citation(citation)));
        });
        return node;
    }

    private static void fill(ObjectNode node, PortableSetUp found) {
        node.put("family", found.siting().family());
        node.put("ruleSet", found.siting().ruleSet());
        node.put("edition", found.siting().edition());
        node.put("solved", found.solved());
        Json.put(node, "slopeDeg", found.siting().slopeDeg());
        Json.put(node, "distanceM", found.siting().distanceM());
        Json.put(node, "lowestOnSlopeDeg", found.siting().lowestOnSlopeDeg());
        found.descent().ifPresent(descent -> node.set("descent", descent(descent)));
        ObjectNode azimuth = node.putObject("azimuth");
        Json.put(azimuth, "landingTrueDeg", found.azimuth().landingTrueDeg());
        Json.put(azimuth, "landingMagneticDeg", found.azimuth().landingMagneticDeg());
        Json.put(azimuth, "beamTrueDeg", found.azimuth().beamTrueDeg());
        Json.put(azimuth, "beamMagneticDeg", found.azimuth().beamMagneticDeg());
        Json.put(azimuth, "variationDeg", found.azimuth().variation().variationDeg());
        azimuth.put("variationSource", found.azimuth().variation().source().english());
        hands(node, found);
        sight(node, found);
        node.set("levelling", levelling(found.levelling()));
        found.battery().ifPresent(battery -> node.set("battery", battery(battery)));
        node.put("sectors", found.sectors().name().toLowerCase(Locale.ROOT));
    }

    /** What the hand does to each unit. */
    private static void hands(ObjectNode node, PortableSetUp found) {
        ArrayNode hands = node.putArray("hands");
        for (HandUnit hand : found.hands()) {
            ObjectNode entry = hands.addObject();
            entry.put("unit", hand.unit().id());
            Json.put(entry, "walkM", hand.walkM());
            Json.put(entry, "walkTrueDeg", hand.walkTrueDeg());
            Json.put(entry, "walkMagneticDeg", hand.walkMagneticDeg());
            Json.put(entry, "beamTrueDeg", hand.beamTrueDeg());
            Json.put(entry, "beamMagneticDeg", hand.beamMagneticDeg());
            Json.put(entry, "settingDeg", hand.unit().settingDeg());
            hand.plate().ifPresent(reading -> {
                ObjectNode plate = entry.putObject("plate");
                Json.put(plate, "zeroMagneticDeg", reading.zeroMagneticDeg());
                Json.put(plate, "readingDeg", reading.exactDeg());
                Json.put(plate, "markDeg", reading.markDeg());
            });
            hand.slope().ifPresent(mark -> Json.put(entry, "slopeMarkDeg", mark.markDeg()));
        }
    }

    private static ObjectNode descent(DescentSlope descent) {
        ObjectNode node = Json.object();
        Json.put(node, "slopeDeg", descent.slopeDeg());
        node.put("form", descent.form().key());
        Json.put(node, "groundSpeedKt", descent.groundSpeedKt());
        Json.put(node, "airSpeedKt", descent.airSpeedKt());
        Json.put(node, "windKt", descent.windKt());
        Json.put(node, "descentFtmin", descent.descentFtMin());
        node.put("stillAir", descent.stillAir());
        descent.table().ifPresent(entry -> {
            ObjectNode table = node.putObject("table");
            Json.put(table, "descentFtmin", entry.descentFtMin());
            table.put("form", entry.form().key());
            table.put("printed", entry.printed());
            table.put("note", entry.note());
        });
        return node;
    }

    private static void sight(ObjectNode node, PortableSetUp found) {
        ArrayNode lines = node.putArray("sightLines");
        for (SightLine line : found.sight().lines()) {
            ObjectNode entry = lines.addObject();
            entry.put("kind", line.kind().key());
            entry.put("name", line.kind().message().english());
            entry.put("unit", line.unit());
            Json.put(entry, "angleDeg", line.angleDeg());
            Json.put(entry, "lowestAngleDeg", line.lowestAngleDeg());
            Json.put(entry, "marginM", line.marginM());
            Json.put(entry, "lowestMarginM", line.lowestMarginM());
            Json.put(entry, "marginDeg", line.marginDeg());
            entry.put("obstacle", line.obstacle());
            entry.put("curvature", line.curvature().english());
        }
        node.put("governing", found.sight().governing().map(line -> line.kind().message().english()).orElse(""));
        node.put("sightClear", found.sight().isClear());
    }

    private static ObjectNode levelling(LevellingEffect effect) {
        ObjectNode node = Json.object();
        Json.put(node, "minutes", effect.minutes());
        Json.put(node, "slopeErrorDeg", effect.slopeErrorDeg());
        Json.put(node, "acrossEdgeMin", effect.acrossEdgeMin());
        ArrayNode heights = node.putArray("heights");
        for (LevellingEffect.HeightError height : effect.heights()) {
            ObjectNode entry = heights.addObject();
            Json.put(entry, "distanceM", height.distanceM());
            Json.put(entry, "heightM", height.heightM());
            Json.put(entry, "downM", height.downM());
            Json.put(entry, "upM", height.upM());
        }
        return node;
    }

    private static ObjectNode battery(BatteryEndurance battery) {
        ObjectNode node = Json.object();
        Json.put(node, "capacityAh", battery.capacityAh());
        Json.put(node, "usableAh", battery.usableAh());
        Json.put(node, "leastHours", battery.leastHours());
        Json.put(node, "mostHours", battery.mostHours());
        Json.put(node, "supplyFromV", battery.supplyFromV());
        Json.put(node, "supplyToV", battery.supplyToV());
        ArrayNode levels = node.putArray("levels");
        for (BatteryEndurance.Level level : battery.levels()) {
            ObjectNode entry = levels.addObject();
            entry.put("step", level.step());
            Json.put(entry, "powerPercent", level.powerPercent());
            Json.put(entry, "hours", level.hours());
        }
        return node;
    }

    private static ObjectNode citation(Citation citation) {
        ObjectNode node = Json.object();
        node.put("name", citation.key());
        node.put("source", citation.source().title().english());
        node.put("clause", citation.clause().english());
        node.put("provenance", citation.provenance().key());
        node.put("toConfirm", citation.toConfirm());
        return node;
    }
}
