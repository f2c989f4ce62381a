package slopewright.report.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.obstacles.SurveyedShape;
import slopewright.evaluation.remedy.Remedies;
import slopewright.evaluation.remedy.Remedy;
import slopewright.geometry.Angles;
import slopewright.geometry.Penetration;
import slopewright.model.Obstacle;
import slopewright.model.Project;
import slopewright.model.util.Projects;
import slopewright.siting.Siting;
import slopewright.siting.SitingException;
import slopewright.siting.SurfacePlan;

/** The obstacle surface of a layout and every obstacle against it. */
final class ObstacleSection {

    private final Html html;
    private final Project project;
    private final AidEvaluation subject;

    ObstacleSection(Html html, Project project, AidEvaluation subject) {
        this.html = html;
        this.project = project;
        this.subject = subject;
    }

    void write(Siting siting) {
        html.section("Obstacle surface");
        if (siting.surface().isEmpty()) {
            html.element("p class=\"alert\"", "The rule set gives no obstacle surface for this layout; the notes say why.");
            return;
        }
        SurfacePlan plan = siting.surface().get();
        String spread = plan.divergenceDeg().isPresent() ? Numbers.plain(plan.divergenceDeg().getAsDouble()) + "\u00b0 on each side"
                : Numbers.plain(plan.divergencePercent()) + " % on each side";
        List<String[]> facts = new ArrayList<>(List.of(new String[] {"Slope", Numbers.angle(plan.slopeDeg())},
                new String[] {"Inner edge", Numbers.metres(plan.innerEdgeM()) + " long, at " + Numbers.metres(plan.startAlongM())
                        + " along, " + Numbers.metres(plan.startHeightM()) + " above the datum"},
                new String[] {"Divergence", spread}, new String[] {"Length", Numbers.metres(plan.lengthM())}));
        if (plan.axisTurnDeg() != 0) {
            facts.add(new String[] {"Axis turned", Angles.format(plan.axisTurnDeg())});
        }
        facts.add(new String[] {"Dimensions from", String.join("; ", plan.citations().stream().map(OutcomeTables::source).distinct()
                .toList())});
        html.facts(facts);
        obstacles(plan);
        remedies();
    }

    /** Adds what would cure a penetration, where there is one. */
    private void remedies() {
        List<Remedy> remedies = Remedies.of(subject);
        if (!remedies.isEmpty()) {
            html.element("p class=\"alert\"", "At least one obstacle stands through the surface. It is removed or lowered, or one of these "
                    + "changes is made, each computed as the smallest that leaves nothing through the surface:");
            html.list(remedies.stream().map(Remedy::text).toList());
        }
    }

    private void obstacles(SurfacePlan plan) {
        List<Obstacle> obstacles = project.getAerodrome() == null ? List.of() : project.getAerodrome().getObstacles();
        if (obstacles.isEmpty()) {
            html.element("p", "The project lists no obstacles.");
            return;
        }
        html.table("numbers", List.of(26, 10, 16, 12, 12, 12, 12), List.of("Obstacle", "Kind", "Governing place: along, right m", "Top m",
                "Surface m", "Margin m", "Verdict"));
        for (Obstacle obstacle : obstacles) {
            List<String> cells = cells(obstacle, plan);
            html.open("tr" + ("through".equals(cells.get(cells.size() - 1)) ? " class=\"fail\"" : ""));
            cells.forEach(cell -> html.element("td", cell));
            html.close("tr");
        }
        html.endTable().element("p class=\"small\"",
                "Top and surface are above the datum of the runway end or helipad, differences of elevations without curvature. The "
                        + "survey accuracy of each obstacle is added on the safe side.");
    }

    private List<String> cells(Obstacle obstacle, SurfacePlan plan) {
        List<String> cells = new ArrayList<>(List.of(Projects.label(obstacle), obstacle.getKind().getName().toLowerCase(Locale.ROOT)));
        try {
            Optional<Penetration> found = SurveyedShape.of(obstacle, subject.frame().orThrow()).compare(plan.geometry());
            if (found.isEmpty()) {
                cells.addAll(List.of("", "", "", "", "outside"));
            } else {
                Penetration worst = found.get();
                cells.addAll(List.of(Numbers.two(worst.point().alongM()) + ", " + Numbers.two(worst.point().rightM()), Numbers.two(worst
                        .point().heightM()), Numbers.two(worst.limitM()), Numbers.two(-worst.excessM()), worst.excessM() > 0 ? "through"
                                : "below"));
            }
        } catch (SitingException e) {
            cells.addAll(List.of(e.getMessage(), "", "", "", "not evaluated"));
        }
        return cells;
    }
}
