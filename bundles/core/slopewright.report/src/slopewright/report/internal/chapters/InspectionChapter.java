package slopewright.report.internal.chapters;

import java.util.List;
import java.util.Optional;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.evaluation.obstacles.ObstacleComparison;
import slopewright.evaluation.obstacles.SurfaceComparison;
import slopewright.evaluation.obstacles.Uncompared;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.GlidePathAid;
import slopewright.report.internal.html.Html;
import slopewright.report.internal.html.ReportWords;
import slopewright.report.internal.html.Upkeep;
import slopewright.siting.Siting;
import slopewright.standards.Citation;
import slopewright.standards.CitedValue;

/** What is flown before an indicator is used, with what is expected, and what is looked after from then on. */
final class InspectionChapter {

    private final Html html;
    private final ReportWords words;
    private final ProjectEvaluation evaluation;

    InspectionChapter(Html html, ProjectEvaluation evaluation) {
        this.html = html;
        this.evaluation = evaluation;
        words = html.words();
    }

    void write() {
        html.section("flight-plan").remark("flight-plan-intro").table("fine", List.of(18, 30, 52), "indicator", "checked", "expected");
        evaluation.aids().forEach(aid -> aid.siting().value().ifPresent(siting -> plan(aid, siting)));
        html.endTable().section("upkeep");
        new Upkeep(html).write(evaluation.aids());
    }

    private void plan(AidEvaluation aid, Siting siting) {
        String name = words.name(aid.aid());
        line(name, "angle", words.say("flight-expected.angle", Words.deg(siting.slopeDeg()), Words.deg(siting.lowestOnSlopeDeg()))
                + limit(value(aid, "operation-accuracy-min").or(() -> value(aid, "reset-beyond-min"))));
        line("", "range", value(aid, "useful-range-day-m").map(range -> words.say("flight.range-by-day", Words.wholeM(range.value())) + " ("
                + state(range.citation()) + ")").orElse(words.say("flight.no-range")));
        line("", "azimuth", words.say("flight-expected.azimuth", Words.name(words.orUnknown(aid.aid().getBeamLeftLimitDeg(), "\u00b0")),
                Words.name(words.orUnknown(aid.aid().getBeamRightLimitDeg(), "\u00b0"))));
        line("", "brightness", words.say("flight-expected.brightness"));
        line("", "obstacles", obstacles(aid));
        GlidePathAid path = aid.host().getGlidePath();
        if (path != null) {
            line("", "glide-path", words.say("flight-expected.glide-path", Words.name(words.orUnknown(path.getPathAngleDeg(), "\u00b0"))));
        }
    }

    /** What was not compared may stand through: the approach is not called clear then. */
    private String obstacles(AidEvaluation aid) {
        List<Message> open = aid.obstacles().value().map(SurfaceComparison::uncompared).orElse(List.of()).stream()
                .map(Uncompared::reason).toList();
        Optional<ObstacleComparison> governing = aid.governing();
        if (!open.isEmpty() && governing.filter(ObstacleComparison::isPenetrating).isEmpty()) {
            return words.say("flight-expected.open", Words.list(open));
        }
        return governing.map(this::obstacle).orElse(words.say("flight-expected.no-obstacle"));
    }

    private String obstacle(ObstacleComparison governing) {
        return words.say(governing.isPenetrating() ? "flight-expected.above" : "flight-expected.below", Words.name(governing.label()),
                Words.margin(Math.abs(governing.marginM())));
    }

    private String limit(Optional<CitedValue> limit) {
        return limit.map(value -> " " + words.say("flight-expected.limit", Words.min(value.value()), Words.name(state(value
                .citation())))).orElse(" " + words.say("flight-expected.no-limit"));
    }

    /** By whom a value was confirmed stands in the annex. */
    private String state(Citation citation) {
        return words.briefSource(citation) + (citation.toConfirm() ? ", " + words.term("to-be-confirmed") : "");
    }

    private static Optional<CitedValue> value(AidEvaluation aid, String name) {
        return aid.family().flatMap(family -> aid.rules().find(family.ruleKey() + "." + name));
    }

    private void line(String aid, String what, String expected) {
        html.row(List.of(aid, words.say("flight." + what), expected));
    }
}
