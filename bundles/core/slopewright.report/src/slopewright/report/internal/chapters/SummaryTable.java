package slopewright.report.internal.chapters;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import slopewright.checks.Standing;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.WheelClearance;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.Aerodrome;
import slopewright.model.util.Projects;
import slopewright.report.internal.html.Coordinates;
import slopewright.report.internal.html.Html;
import slopewright.report.internal.html.ReportWords;
import slopewright.siting.Siting;
import slopewright.siting.UnitPlan;
import slopewright.siting.site.CoordinateBasis;
import slopewright.siting.site.SiteFrame;

/** All approach aids in one table for the first page: what is decided on, with what is open. */
final class SummaryTable {

    /** More units than that are told by their settings alone. */
    private static final int MOST_UNITS = 6;

    private final Html html;
    private final ReportWords words;
    private final ReportSource source;

    SummaryTable(Html html, ReportSource source) {
        this.html = html;
        this.source = source;
        words = html.words();
    }

    void write() {
        html.open("div class=\"locked\"").table("summary", List.of(21, 13, 15, 16, 18, 17), "indicator", "slope-and-settings",
                "distance-and-eye-height", "governing-obstacle", "wheel-clearances", "reference-point");
        source.evaluation().aids().forEach(this::row);
        Optional<Aerodrome> site = Optional.ofNullable(source.project().getAerodrome());
        html.endTable().remark("summary.read", site.map(found -> CoordinateBasis.of(found).words())
                .orElse(Words.name(words.orUnknown(null))),
                Words.name(words.orUnknown(site.map(Aerodrome::getVerticalDatum).orElse(null)))).close("div");
    }

    private void row(AidEvaluation aid) {
        Standing standing = Standing.of(List.of(aid), source.result());
        html.open(switch (standing.verdict()) {
            case NOT_MET -> "tr class=\"fail\"";
            case TO_CLEAR_UP -> "tr class=\"warning\"";
            default -> "tr";
        }).open("td")
                .element("p class=\"name\"", words.path(aid.aid()).replace(" > ", ", "))
                .element("p", words.family(aid.family(), aid.aid().getFamilyKey()) + ", " + words.term("side", aid.aid().getSide()))
                .element("p", words.render(standing.words())).close("td");
        Optional<Siting> laid = aid.siting().value();
        if (laid.isEmpty()) {
            html.element("td colspan=\"5\"", words.say("no-layout", aid.siting().reason().orElseThrow()));
        } else {
            Siting siting = laid.get();
            cell(settings(siting));
            boolean runway = Projects.helipad(aid.host()).isEmpty();
            cell(List.of(words.metres(siting.distanceM()), words.say(runway ? "summary.meht" : "summary.eye-height",
                    Words.m(siting.mehtM()))));
            cell(List.of(obstacle(aid)));
            cell(wheels(aid));
            cell(reference(aid, siting));
        }
        html.close("tr");
    }

    private void cell(List<String> lines) {
        html.open("td");
        lines.forEach(line -> html.element("p", line));
        html.close("td");
    }

    private List<String> settings(Siting siting) {
        List<String> lines = new ArrayList<>(List.of(words.say("summary.slope", Words.deg(siting.slopeDeg()))));
        List<UnitPlan> units = siting.units();
        if (units.size() > MOST_UNITS) {
            lines.add(words.list(units.stream().map(UnitPlan::settingDeg).distinct().sorted().map(words::minutes).toList()));
        } else {
            units.forEach(unit -> lines.add(unit.id() + " " + words.minutes(unit.settingDeg())));
        }
        return lines;
    }

    private String obstacle(AidEvaluation aid) {
        return aid.obstacles().value().map(compared -> compared.governing()
                .map(governing -> words.say(compared.isComplete() ? "margin-of" : "margin-of-incomplete", Words.margin(governing.marginM()),
                        Words.name(governing.label())))
                .orElseGet(() -> words.say(compared.isComplete() ? "margin-nothing-inside" : "margin-nothing-known")))
                .orElseGet(() -> words.render(aid.obstacles().reason().orElse(Message.of("siting.no-surface"))));
    }

    private List<String> wheels(AidEvaluation aid) {
        List<String> lines = new ArrayList<>();
        for (WheelClearance wheels : aid.wheelClearances()) {
            lines.add(words.say("summary.wheels", Words.name(words.name(wheels.group())), Words.m(wheels.clearanceM())));
        }
        return lines.isEmpty() ? List.of(words.say("summary.no-wheels")) : lines;
    }

    private List<String> reference(AidEvaluation aid, Siting siting) {
        Optional<SiteFrame> frame = aid.frame().value();
        Optional<SiteFrame.LatLon> place = frame.flatMap(found -> found.latLon(siting.reference()));
        List<String> lines = new ArrayList<>();
        place.ifPresent(found -> {
            lines.add(Coordinates.latitude(words, found.latitudeDeg()));
            lines.add(Coordinates.longitude(words, found.longitudeDeg()));
        });
        frame.ifPresent(found -> lines.add(words.say("summary.elevation", Words.m(found.originElevationM()
                + siting.reference().heightM()))));
        return lines.isEmpty() ? List.of(words.term("not-known")) : lines;
    }
}
