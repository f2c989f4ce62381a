package slopewright.report.internal;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

import slopewright.evaluation.asbuilt.AsBuilt;
import slopewright.geometry.Angles;
import slopewright.messages.Message;
import slopewright.model.AeroplaneGroup;
import slopewright.model.ApproachHost;
import slopewright.model.Inspection;
import slopewright.model.util.Projects;
import slopewright.siting.Siting;
import slopewright.standards.RuleSet;

/** What the indicator gives as it was measured, what was found in flight, and what stands against acceptance. */
final class AsBuiltSection {

    private final Html html;
    private final ApproachHost host;
    private final RuleSet rules;
    private final AsBuilt result;

    AsBuiltSection(Html html, ApproachHost host, RuleSet rules, AsBuilt result) {
        this.html = html;
        this.host = host;
        this.rules = rules;
        this.result = result;
    }

    /** Adds the results of the measured layout. */
    void results() {
        html.element("h2 class=\"flow\"", "As built");
        if (!result.isMeasured()) {
            html.element("p", "No unit has a measured angle yet; the results as built follow once they are entered.");
            return;
        }
        Siting planned = result.planned();
        Siting built = result.built();
        html.table("numbers", List.of(40, 20, 20, 20), List.of("Result", "Planned", "As built", "Change"));
        row("Distance m", OptionalDouble.of(planned.distanceM()), OptionalDouble.of(built.distanceM()));
        row("Lowest on-slope signal \u00b0", OptionalDouble.of(planned.lowestOnSlopeDeg()), OptionalDouble.of(built.lowestOnSlopeDeg()));
        row("Eye height m", OptionalDouble.of(planned.mehtM()), OptionalDouble.of(built.mehtM()));
        row("Wheel clearance m", planned.wheelClearanceM(), built.wheelClearanceM());
        row("Least margin of an obstacle m", result.plannedMarginM(), result.builtMarginM());
        html.endTable();
        if (!result.notMeasured().isEmpty()) {
            html.element("p class=\"small\"", "Units without a measured angle count as planned: " + String.join(", ", result.notMeasured())
                    + ".");
        }
        wheels(built);
    }

    private void wheels(Siting built) {
        List<AeroplaneGroup> groups = host.getRegularGroups().stream().filter(group -> group.getEyeToWheelM() != null).toList();
        if (groups.isEmpty()) {
            return;
        }
        html.table("numbers", List.of(40, 20, 20, 20), List.of("Aeroplane group", "Wheels clear by m, as built", "Desired m",
                "Minimum m"));
        for (AeroplaneGroup group : groups) {
            var band = rules.wheelClearance().flatMap(table -> table.group(group.getEyeToWheelM()));
            html.row("td", List.of(Projects.label(group), Numbers.two(built.mehtM() - group.getEyeToWheelM()),
                    band.map(one -> Numbers.two(one.desiredM())).orElse("-"), band.map(one -> Numbers.two(one.minimumM())).orElse("-")));
        }
        html.endTable();
    }

    /** Adds the flight inspections, or lines to write one down. */
    void flights() {
        html.element("h2 class=\"flow\"", "Flight inspection");
        if (result.flights().isEmpty()) {
            html.table("write", List.of(40, 20, 20, 20), List.of("Checked", "Found", "Date", "Inspector"));
            List.of("Angle of the slope as flown", "Usable range", "Azimuth at which the signal ends, left and right",
                    "All units of the same brightness", "Beam clear of obstacles over its whole width",
                    "Agreement with the glide path, where there is one").forEach(line -> html.row("td", List.of(line, "", "", "")));
            html.endTable();
        }
        result.flights().forEach(this::flight);
    }

    private void flight(AsBuilt.Flight flight) {
        Inspection found = flight.inspection();
        html.table("data", List.of(30, 20, 20, 30), List.of("Checked", "Found", "Planned", "Comes to"));
        html.row("td", List.of("Angle of the slope", found.getOnSlopeAngleDeg() == null ? "not entered"
                : Angles.format(found.getOnSlopeAngleDeg()), Angles.format(result.planned().slopeDeg()), flight.offMin().isEmpty() ? ""
                        : String.format(Locale.ROOT, "%+.1f'; %s", flight.offMin().getAsDouble(), flight.advice().map(Message::english).orElse(""))));
        html.row("td", List.of("Usable range", Numbers.orUnknown(found.getUsableRangeM(), "m"),
                flight.publishedRange().map(range -> Numbers.plain(range.value()) + " m by day").orElse("no published range"),
                flight.reachesRange().map(reached -> reached ? "reached" : "NOT REACHED").orElse("")
                        + flight.publishedRange().map(range -> ", " + OutcomeTables.source(range.citation())).orElse("")));
        html.row("td", List.of("Signal ends left, right", Numbers.orUnknown(found.getAzimuthLeftDeg(), "\u00b0") + ", "
                + Numbers.orUnknown(found.getAzimuthRightDeg(), "\u00b0"), "", ""));
        html.row("td", List.of("Beam clear of obstacles", found.getObstacleClear() == null ? "not entered"
                : found.getObstacleClear() ? "yes" : "NO", "yes", ""));
        html.endTable();
        html.element("p class=\"small\"", "Inspected by " + Numbers.orUnknown(found.getPerson()) + ", "
                + Numbers.orUnknown(found.getOrganisation()) + ", " + Numbers.orUnknown(found.getDate())
                + (found.getRemarks() == null ? "" : ". " + found.getRemarks()));
    }

    /** Adds what stands against acceptance. */
    void certificate() {
        html.open("div class=\"keep\"").element("h2 class=\"flow\"", "Certificate");
        boolean clear = result.findings().isEmpty();
        html.element("p class=\"verdict " + (clear ? "clear" : "open") + "\"", clear
                ? "As measured and flown, the indicator keeps the tolerances of the rule set."
                : "The indicator can not be accepted on this sheet as it stands.");
        html.list(result.findings().stream().map(Message::english).toList());
        result.accuracy().ifPresent(accuracy -> html.element("p class=\"small\"", "Accuracy of setting: "
                + Numbers.plain(accuracy.value()) + "', " + OutcomeTables.source(accuracy.citation())
                + (accuracy.citation().toConfirm() ? ", to be confirmed" : "") + result.resetBeyond().map(beyond -> "; set again beyond "
                        + Numbers.plain(beyond.value()) + "', " + OutcomeTables.source(beyond.citation())
                        + (beyond.citation().toConfirm() ? ", to be confirmed" : "")).orElse("") + "."));
        ClosingChapter.signatures(html, List.of("Measured", "Inspected in flight", "Accepted by the authority"));
        html.close("div");
    }

    private void row(String name, OptionalDouble planned, OptionalDouble built) {
        if (planned.isPresent() || built.isPresent()) {
            html.row("td", List.of(name, text(planned), text(built), planned.isPresent() && built.isPresent() ? String.format(Locale.ROOT,
                    "%+.3f", built.getAsDouble() - planned.getAsDouble()) : ""));
        }
    }

    private static String text(OptionalDouble value) {
        return value.isEmpty() ? "not known" : String.format(Locale.ROOT, "%.3f", value.getAsDouble());
    }
}
