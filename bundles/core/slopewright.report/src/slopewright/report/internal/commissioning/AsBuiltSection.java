package slopewright.report.internal.commissioning;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;

import slopewright.evaluation.WheelClearance;
import slopewright.evaluation.asbuilt.AsBuilt;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.Inspection;
import slopewright.report.internal.html.Html;
import slopewright.report.internal.html.ReportWords;
import slopewright.siting.Siting;
import slopewright.standards.CitedValue;

/** What the indicator gives as it was measured, what was found in flight, and what stands against acceptance. */
final class AsBuiltSection {

    private static final String DEGREE = "\u00b0";

    private final Html html;
    private final ReportWords words;
    private final AsBuilt result;

    AsBuiltSection(Html html, AsBuilt result) {
        this.html = html;
        this.result = result;
        words = html.words();
    }

    /** Adds the results of the measured layout. */
    void results() {
        html.part("as-built");
        if (!result.isMeasured()) {
            html.paragraph("nothing-measured");
            return;
        }
        Siting planned = result.planned();
        Siting built = result.built();
        html.table("numbers", List.of(40, 20, 20, 20), "result", "planned", "as-built", "change");
        row("distance-m", OptionalDouble.of(planned.distanceM()), OptionalDouble.of(built.distanceM()));
        row("lowest-signal-degrees", OptionalDouble.of(planned.lowestOnSlopeDeg()), OptionalDouble.of(built.lowestOnSlopeDeg()));
        row("eye-height-m", OptionalDouble.of(planned.mehtM()), OptionalDouble.of(built.mehtM()));
        row("wheel-clearance-m", planned.wheelClearanceM(), built.wheelClearanceM());
        row("margin-m", result.plannedMarginM(), result.builtMarginM());
        html.endTable();
        if (!result.notMeasured().isEmpty()) {
            html.remark("count-as-planned", Words.names(result.notMeasured()));
        }
        wheels();
    }

    private void row(String name, OptionalDouble planned, OptionalDouble built) {
        if (planned.isPresent() || built.isPresent()) {
            html.row(List.of(words.say("head." + name), text(planned), text(built), planned.isPresent() && built.isPresent()
                    ? words.signed(built.getAsDouble() - planned.getAsDouble(), 3) : ""));
        }
    }

    private String text(OptionalDouble value) {
        return value.isEmpty() ? words.term("not-known") : words.fixed(value.getAsDouble(), 3);
    }

    private void wheels() {
        List<WheelClearance> clearances = result.measured().wheelClearances();
        if (clearances.isEmpty()) {
            return;
        }
        html.table("numbers", List.of(40, 20, 20, 20), "aeroplane-group", "wheels-clear-by-m", "desired-m", "minimum-m");
        for (WheelClearance wheels : clearances) {
            html.row(List.of(words.name(wheels.group()), words.two(wheels.clearanceM()),
                    wheels.band().map(band -> words.two(band.desiredM())).orElse("-"),
                    wheels.band().map(band -> words.two(band.minimumM())).orElse("-")));
        }
        html.endTable();
    }

    /** Adds the flight inspections, or lines to write one down. */
    void flights() {
        html.open("div class=\"keep\"").part("flight-inspection");
        if (result.flights().isEmpty()) {
            html.table("write", List.of(40, 20, 20, 20), "checked", "found", "date", "inspector");
            Stream.of("angle", "range", "azimuth", "brightness", "obstacles", "glide-path").forEach(line -> html.row(List.of(words.say(
                    "flight." + line), "", "", "")));
            html.endTable();
        }
        for (int i = 0; i < result.flights().size(); i++) {
            if (i > 0) {
                html.close("div").open("div class=\"keep\"");
            }
            flight(result.flights().get(i));
        }
        html.close("div");
    }

    private void flight(AsBuilt.Flight flight) {
        Inspection found = flight.inspection();
        html.table("data", List.of(30, 20, 20, 30), "checked", "found", "planned", "comes-to");
        html.row(List.of(words.say("flight.angle"), found.getOnSlopeAngleDeg() == null ? words.term("not-entered")
                : words.minutes(found.getOnSlopeAngleDeg()), words.minutes(result.planned().slopeDeg()),
                flight.offMin().isEmpty() ? "" : words.signed(flight.offMin().getAsDouble(), 1) + "'; "
                        + flight.advice().map(words::render).orElse("")));
        html.row(List.of(words.say("flight.range"), words.orUnknown(found.getUsableRangeM(), "m"),
                flight.publishedRange().map(range -> words.say("flight.range-by-day", Words.wholeM(range.value())))
                        .orElse(words.say("flight.no-range")), range(flight)));
        html.row(List.of(words.say("flight.azimuth"), words.orUnknown(found.getAzimuthLeftDeg(), DEGREE) + ", "
                + words.orUnknown(found.getAzimuthRightDeg(), DEGREE), "", ""));
        html.row(List.of(words.say("flight.obstacles"), found.getObstacleClear() == null ? words.term("not-entered")
                : found.getObstacleClear() ? words.term("yes") : words.say("flight.not-clear"), words.term("yes"), ""));
        html.endTable();
        String inspected = words.say("flight.by", Words.name(words.orUnknown(found.getPerson())), Words.name(words.orUnknown(found
                .getOrganisation())), Words.name(words.orUnknown(found.getDate())));
        html.element("p class=\"small\"", found.getRemarks() == null ? inspected : inspected + ". " + found.getRemarks());
    }

    private String range(AsBuilt.Flight flight) {
        List<String> parts = new ArrayList<>();
        flight.reachesRange().ifPresent(reached -> parts.add(words.say(reached ? "flight.reached" : "flight.not-reached")));
        flight.publishedRange().map(CitedValue::citation).map(words::source).ifPresent(parts::add);
        return String.join(", ", parts);
    }

    /** Adds what stands against acceptance: what was measured and flown, and what the rules say of the plan and of what was built. */
    void certificate(List<Message> rules) {
        html.open("div class=\"keep\"").part("certificate");
        List<Message> against = Stream.concat(result.findings().stream(), rules.stream()).toList();
        boolean clear = against.isEmpty();
        html.element("p class=\"locked verdict " + (clear ? "clear" : "open") + "\"", words.say(clear ? "accepted" : "not-accepted"));
        html.list(words.render(against));
        result.accuracy().ifPresent(accuracy -> html.remark("setting-accuracy", Words.min(accuracy.value()), Words.name(words
                .sourceAndState(accuracy.citation()))));
        result.resetBeyond().ifPresent(beyond -> html.remark("set-again-beyond", Words.min(beyond.value()), Words.name(words
                .sourceAndState(beyond.citation()))));
        html.signatures(List.of("measured", "inspected-in-flight", "accepted-by-authority"));
        html.close("div");
    }
}
