package slopewright.report.internal.chapters;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.obstacles.ObstacleComparison;
import slopewright.evaluation.obstacles.SeenTop;
import slopewright.evaluation.obstacles.SurfaceComparison;
import slopewright.evaluation.obstacles.Uncompared;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.Aerodrome;
import slopewright.model.Identified;
import slopewright.model.Obstacle;
import slopewright.model.Project;
import slopewright.model.util.Projects;
import slopewright.report.internal.html.Facts;
import slopewright.report.internal.html.Html;
import slopewright.report.internal.html.ReportWords;
import slopewright.siting.Siting;
import slopewright.siting.SurfacePlan;

/** The obstacle surface of a layout and everything that stands there against it. */
final class ObstacleSection {

    private static final int MOST_OUTSIDE = 40;

    private final Html html;
    private final ReportWords words;
    private final Project project;
    private final AidEvaluation aid;

    ObstacleSection(Html html, Project project, AidEvaluation aid) {
        this.html = html;
        this.project = project;
        this.aid = aid;
        words = html.words();
    }

    void write(Siting siting) {
        html.section("obstacle-surface");
        siting.surface().ifPresent(this::surface);
        Optional<SurfaceComparison> compared = aid.obstacles().value();
        if (compared.isEmpty()) {
            html.alert("no-obstacle-comparison", aid.obstacles().reason().orElse(Message.of("siting.no-surface")));
            return;
        }
        if (compared.get().isUnsurveyed() && compared.get().uncompared().isEmpty()) {
            html.alert("no-obstacles");
            return;
        }
        margin(compared.get());
        table(compared.get(), siting);
        outside(compared.get());
        html.remark("obstacle-heights");
    }

    private void surface(SurfacePlan plan) {
        String spread = plan.divergenceDeg().isPresent() ? words.say("divergence-degrees", Words.number(plan.divergenceDeg().getAsDouble()))
                : words.say("divergence-percent", Words.number(plan.divergencePercent()));
        Facts facts = html.newFacts().add("slope", words.angle(plan.slopeDeg()))
                .add("inner-edge", words.say("inner-edge", Words.m(plan.innerEdgeM()), Words.m(plan.startAlongM()), Words.m(
                        plan.startHeightM())))
                .add("divergence", spread).add("length", words.render(Message.of("plain", Words.wholeM(plan.lengthM()))));
        if (plan.axisTurnDeg() != 0) {
            facts.add("axis-turned", words.minutes(plan.axisTurnDeg()));
        }
        html.pairs(facts.add("dimensions-from", String.join("; ", plan.citations().stream().map(words::source).distinct().toList())));
    }

    private void margin(SurfaceComparison compared) {
        compared.governing().ifPresent(governing -> html.paragraph(governing.isPenetrating() ? "governing-above" : "governing-below",
                Words.name(governing.label()), Words.margin(Math.abs(governing.marginM()))));
    }

    private void table(SurfaceComparison compared, Siting siting) {
        if (compared.inside().isEmpty() && compared.uncompared().isEmpty()) {
            html.paragraph("nothing-inside", Words.count(compared.surveyed()));
            return;
        }
        html.table("numbers", List.of(18, 8, 16, 10, 9, 9, 10, 20), "obstacle", "kind", "governing-place", "top-m", "surface-m", "margin-m",
                "against-surface", "sight-line");
        compared.inside().forEach(found -> html.styledRow(found.isUnshieldedPenetration() ? "fail" : "plain", cells(found, siting)));
        for (Uncompared uncompared : compared.uncompared()) {
            html.open("tr class=\"warning\"").element("td", uncompared.label()).element("td", kind(uncompared.element()))
                    .element("td colspan=\"4\"", words.say("not-compared", uncompared.reason())).element("td", words.term("to-clear-up"))
                    .element("td", words.term("to-clear-up")).close("tr");
        }
        html.endTable();
        compared.inside().forEach(found -> found.block().ifPresent(block -> html.remark("block-points", Words.name(found.label()),
                Words.count(block.points()), Words.count(block.inside()), Words.count(block.above()))));
    }

    private List<String> cells(ObstacleComparison found, Siting siting) {
        return List.of(found.label(), kind(found.element()),
                words.two(found.worst().point().alongM()) + ", " + words.two(found.worst().point().rightM()),
                words.two(found.worst().point().heightM()), words.two(found.worst().limitM()), words.margin(found
                        .marginM(), 0), state(found),
                sight(found, siting));
    }

    /** From which lens the top is seen highest, and how far below the lowest on-slope signal that is. */
    private String sight(ObstacleComparison found, Siting siting) {
        return SeenTop.of(siting.units(), found).map(seen -> words.say(seen.angleDeg() < siting.lowestOnSlopeDeg() ? "seen-below"
                : "seen-above", Words.name(seen.unit()), Words.deg(seen.angleDeg()), Words.deg(Math.abs(siting.lowestOnSlopeDeg() - seen
                        .angleDeg())))).orElse(words.say("seen-from-none"));
    }

    private String state(ObstacleComparison found) {
        if (!found.isPenetrating()) {
            return words.term("below");
        }
        return switch (found.shielding().kind()) {
            case NONE -> words.term("through");
            case CLAIMED -> words.say("through-claimed");
            case BY_OBJECT, BY_STUDY -> words.say("through-shielded", Words.name(found.shielding().by()));
        };
    }

    private String kind(Identified element) {
        return element instanceof Obstacle obstacle ? words.term("obstacle", obstacle.getKind()) : words.term("survey-block");
    }

    /** Names the obstacles that lie outside the surface, so that none is left out without a word. */
    private void outside(SurfaceComparison compared) {
        Set<Identified> listed = Stream.concat(compared.inside().stream().map(ObstacleComparison::element), compared.uncompared().stream()
                .map(Uncompared::element)).collect(Collectors.toSet());
        List<String> outside = Optional.ofNullable(project.getAerodrome()).map(Aerodrome::getObstacles).stream().flatMap(List::stream)
                .filter(obstacle -> !listed.contains(obstacle)).map(Projects::label).toList();
        if (!outside.isEmpty()) {
            html.remark("outside", Words.listed(outside.stream().map(Words::name).toList(), MOST_OUTSIDE));
        }
    }
}
