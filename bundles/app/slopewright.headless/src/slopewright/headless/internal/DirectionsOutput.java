package slopewright.headless.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.landing.ClearSector;
import slopewright.evaluation.landing.ClosedSector;
import slopewright.evaluation.landing.LandingCell;
import slopewright.evaluation.landing.LandingDirection;
import slopewright.evaluation.landing.LandingDirections;
import slopewright.evaluation.landing.LandingSpeed;
import slopewright.evaluation.landing.LandingWind;
import slopewright.exchange.sheet.Sheet;
import slopewright.exchange.sheet.SheetCell;
import slopewright.messages.Message;
import slopewright.standards.RuleSet;

/** Writes the landing directions round a helipad as text, as JSON and as a table. */
final class DirectionsOutput {
    private static final List<String> COLUMNS = List.of("trueDeg", "magneticDeg", "state", "clearFromDeg", "clearToDeg", "headwindKt",
            "crosswindKt", "descentFtmin", "slopeDeg", "marginM", "line", "governing", "reason");

    private final AidEvaluation evaluation;
    private final LandingDirections found;
    private final Asked asked;

    /**
     * What was asked beside the directions.
     *
     * @param speed        at which the site is approached
     * @param wind         the wind, empty for still air
     * @param variationDeg magnetic variation, decimal degrees, empty where nobody can say
     * @param slopes       whether every slope is wanted
     */
    record Asked(Optional<LandingSpeed> speed, Optional<LandingWind> wind, OptionalDouble variationDeg, boolean slopes) {

        Asked {
            Objects.requireNonNull(speed);
            Objects.requireNonNull(wind);
            Objects.requireNonNull(variationDeg);
        }

        double headwindKt(double trueDeg) {
            return wind.map(blowing -> blowing.headwindKt(trueDeg)).orElse(0.0);
        }

        double crosswindKt(double trueDeg) {
            return wind.map(blowing -> blowing.crosswindKt(trueDeg)).orElse(0.0);
        }

        OptionalDouble descentFtMin(double slopeDeg, double trueDeg) {
            return speed.map(flown -> flown.descentFtMin(slopeDeg, headwindKt(trueDeg))).orElseGet(OptionalDouble::empty);
        }

        OptionalDouble magneticDeg(double trueDeg) {
            return variationDeg.isEmpty() ? variationDeg
                    : OptionalDouble.of((trueDeg - variationDeg.getAsDouble() + LandingDirections.COUNT) % LandingDirections.COUNT);
        }
    }

    DirectionsOutput(AidEvaluation evaluation, LandingDirections found, Asked asked) {
        this.evaluation = evaluation;
        this.found = found;
        this.asked = asked;
    }

    void print(Streams out) {
        RuleSet rules = evaluation.rules();
        out.sayf("%s, %s:%s", DirectionsCommand.label(evaluation), rules.key(), rules.edition());
        asked.wind().ifPresent(wind -> out.sayf("Wind %03.0f° true, %.0f kt", wind.fromTrueDeg(), wind.speedKt()));
        asked.speed().ifPresent(speed -> out.sayf("Speed %.0f kt, %s", speed.kt(), speed.kind() == LandingSpeed.Kind.GROUND
                ? "over the ground" : "through the air"));
        out.say("");
        found.sentences(0).forEach(sentence -> out.say(sentence.english()));
        List<ClearSector> sectors = found.sectors();
        if (!sectors.isEmpty()) {
            String form = "%-12s %-12s %14s %18s %18s %20s";
            out.say("");
            out.sayf(form, "Clear, true", "magnetic", "from slope", "headwind kt", "crosswind kt", "descent ft/min");
            sectors.forEach(sector -> out.sayf(form, span(sector.fromTrueDeg(), sector.toTrueDeg(), OptionalDouble.of(0)),
                    span(sector.fromTrueDeg(), sector.toTrueDeg(), asked.variationDeg()), slopes(sector),
                    range(sector, asked::headwindKt), range(sector, asked::crosswindKt), asked.speed().isEmpty() ? "-"
                            : range(sector, bearing -> asked.descentFtMin(sector.clearFromDeg(), bearing).orElse(Double.NaN))));
        }
        List<ClosedSector> closed = found.closedSectors();
        if (!closed.isEmpty()) {
            out.say("");
            out.sayf("%-12s %-12s %s", "Closed, true", "magnetic", "by, at the steepest slope");
            closed.forEach(sector -> out.sayf("%-12s %-12s %s", span(sector.fromTrueDeg(), sector.toTrueDeg(), OptionalDouble.of(0)),
                    span(sector.fromTrueDeg(), sector.toTrueDeg(), asked.variationDeg()), String.format(Locale.ROOT, "%.1f°: %s",
                            sector.steepest().slopeDeg(), sector.steepest().reason().map(Message::english).orElse(""))));
        }
        out.say("");
        found.notes().forEach(note -> out.say("Note: " + note.english()));
    }

    private static String span(int from, int to, OptionalDouble variationDeg) {
        if (variationDeg.isEmpty()) {
            return "-";
        }
        return bearing(from - variationDeg.getAsDouble()) + (from == to ? "" : "-" + bearing(to - variationDeg.getAsDouble()));
    }

    private static String bearing(double deg) {
        return String.format(Locale.ROOT, "%03d", Math.floorMod(Math.round(deg), LandingDirections.COUNT));
    }

    private static String slopes(ClearSector sector) {
        return String.format(Locale.ROOT, "%.1f°", sector.clearFromDeg()) + (sector.clearToDeg().isEmpty() ? ""
                : String.format(Locale.ROOT, " to %.1f°", sector.clearToDeg().getAsDouble()));
    }

    private static String range(ClearSector sector, ToDoubleFunction<Double> of) {
        double[] all = IntStream.range(0, sector.count()).mapToDouble(i -> of.applyAsDouble((double) ((sector.fromTrueDeg() + i)
                % LandingDirections.COUNT))).filter(Double::isFinite).sorted().toArray();
        if (all.length == 0) {
            return "-";
        }
        String least = String.format(Locale.ROOT, "%.0f", all[0] + 0.0);
        String most = String.format(Locale.ROOT, "%.0f", all[all.length - 1] + 0.0);
        return least.equals(most) ? least : least + " to " + most;
    }

    ObjectNode json() {
        ObjectNode node = Json.object();
        node.put("aid", String.valueOf(evaluation.aid().getId()));
        node.put("proposed", evaluation.isProposal());
        node.put("label", DirectionsCommand.label(evaluation));
        node.put("family", String.valueOf(evaluation.aid().getFamilyKey()));
        node.put("ruleSet", evaluation.rules().key());
        node.put("edition", evaluation.rules().edition());
        Json.put(node, "variationDeg", asked.variationDeg());
        asked.speed().ifPresent(speed -> Json.put(node, speed.kind() == LandingSpeed.Kind.GROUND ? "groundSpeedKt" : "airSpeedKt",
                speed.kt()));
        asked.wind().ifPresent(wind -> {
            ObjectNode blowing = node.putObject("wind");
            Json.put(blowing, "fromTrueDeg", wind.fromTrueDeg());
            Json.put(blowing, "speedKt", wind.speedKt());
        });
        ObjectNode tried = node.putObject("slopes");
        Json.put(tried, "fromDeg", found.slopes().fromDeg());
        Json.put(tried, "toDeg", found.slopes().toDeg());
        Json.put(tried, "stepDeg", found.slopes().stepDeg());
        ArrayNode sectors = node.putArray("sectors");
        for (ClearSector sector : found.sectors()) {
            ObjectNode entry = sectors.addObject();
            entry.put("fromTrueDeg", sector.fromTrueDeg());
            entry.put("toTrueDeg", sector.toTrueDeg());
            Json.put(entry, "fromMagneticDeg", asked.magneticDeg(sector.fromTrueDeg()));
            Json.put(entry, "toMagneticDeg", asked.magneticDeg(sector.toTrueDeg()));
            Json.put(entry, "clearFromDeg", sector.clearFromDeg());
            Json.put(entry, "clearToDeg", sector.clearToDeg());
            entry.put("text", sector.message(0).english());
        }
        ArrayNode directions = node.putArray("directions");
        found.directions().forEach(direction -> directions.add(json(direction)));
        found.notes().stream().map(Message::english).forEach(node.putArray("notes")::add);
        return node;
    }

    private ObjectNode json(LandingDirection direction) {
        ObjectNode node = Json.object();
        Json.put(node, "trueDeg", direction.trueDeg());
        Json.put(node, "magneticDeg", asked.magneticDeg(direction.trueDeg()));
        Json.put(node, "clearFromDeg", direction.clearFromDeg());
        Json.put(node, "clearToDeg", direction.clearToDeg());
        Json.put(node, "headwindKt", asked.headwindKt(direction.trueDeg()));
        Json.put(node, "crosswindKt", asked.crosswindKt(direction.trueDeg()));
        put(node, direction, direction.telling());
        if (asked.slopes()) {
            ArrayNode slopes = node.putArray("slopes");
            direction.cells().forEach(cell -> put(slopes.addObject(), direction, cell));
        }
        return node;
    }

    private void put(ObjectNode node, LandingDirection direction, LandingCell cell) {
        Json.put(node, "slopeDeg", cell.slopeDeg());
        node.put("state", cell.state().key());
        Json.put(node, "marginM", cell.marginM());
        node.put("line", cell.line().map(LandingCell.Line::key).orElse(null));
        node.put("governing", cell.governing().map(standing -> standing.label()).orElse(null));
        node.put("element", cell.governing().map(standing -> standing.element().getId()).orElse(null));
        Json.put(node, "descentFtmin", asked.descentFtMin(cell.slopeDeg(), direction.trueDeg()));
        node.put("reason", cell.reason().map(Message::english).orElse(null));
    }

    Sheet sheet() {
        List<List<SheetCell>> rows = new ArrayList<>();
        for (LandingDirection direction : found.directions()) {
            for (LandingCell cell : asked.slopes() ? direction.cells() : List.of(direction.telling())) {
                rows.add(row(direction, cell));
            }
        }
        return new Sheet("Directions", COLUMNS, rows, List.of());
    }

    private List<SheetCell> row(LandingDirection direction, LandingCell cell) {
        return List.of(SheetCell.number(direction.trueDeg(), 0), number(asked.magneticDeg(direction.trueDeg()), 1),
                SheetCell.text(cell.state().key()), number(direction.clearFromDeg(), 2), number(direction.clearToDeg(), 2),
                SheetCell.number(asked.headwindKt(direction.trueDeg()) + 0.0, 1),
                SheetCell.number(asked.crosswindKt(direction.trueDeg()) + 0.0, 1),
                number(asked.descentFtMin(cell.slopeDeg(), direction.trueDeg()), 0), SheetCell.number(cell.slopeDeg(), 2),
                number(cell.marginM(), 2), SheetCell.text(cell.line().map(LandingCell.Line::key).orElse("")),
                SheetCell.text(cell.governing().map(standing -> standing.label()).orElse("")),
                SheetCell.text(cell.reason().map(Message::english).orElse("")));
    }

    private static SheetCell number(OptionalDouble value, int decimals) {
        return SheetCell.number(value.isPresent() ? Double.valueOf(value.getAsDouble()) : null, decimals, "");
    }
}
