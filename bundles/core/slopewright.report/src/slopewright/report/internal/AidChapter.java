package slopewright.report.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import slopewright.checks.AidSubject;
import slopewright.drawing.DrawnAid;
import slopewright.drawing.PilotScene;
import slopewright.drawing.PlanScene;
import slopewright.drawing.Scene;
import slopewright.drawing.SectionScene;
import slopewright.geometry.Angles;
import slopewright.geometry.Penetration;
import slopewright.model.AeroplaneGroup;
import slopewright.model.EquipmentType;
import slopewright.model.Obstacle;
import slopewright.model.Project;
import slopewright.model.RunwayEnd;
import slopewright.model.util.Projects;
import slopewright.siting.Siting;
import slopewright.siting.SitingException;
import slopewright.siting.SurfacePlan;
import slopewright.siting.UnitPlan;
import slopewright.siting.site.ObstacleShapes;
import slopewright.standards.WheelClearanceTable;

/** The chapter of one approach aid: layout, heights, obstacles, drawings. */
final class AidChapter {

    private static final double RUNWAY_VIEW_M = 1500;
    private static final double HELIPAD_VIEW_M = 300;

    private final Html html;
    private final Project project;
    private final AidSubject subject;
    private final Pictures pictures;

    AidChapter(Html html, Project project, AidSubject subject, Pictures pictures) {
        this.html = html;
        this.project = project;
        this.subject = subject;
        this.pictures = pictures;
    }

    void write() {
        html.element("h2 class=\"chapter\"", Projects.path(subject.aid()));
        Optional<Siting> laid = subject.laid().value();
        html.facts(about(laid));
        if (laid.isEmpty()) {
            html.element("p class=\"alert\"", "No layout could be worked out: " + subject.laid().reason() + ".");
            return;
        }
        Siting siting = laid.get();
        units(siting);
        wheels(siting);
        surface(siting);
        notes(siting);
        drawings(siting);
    }

    private List<String[]> about(Optional<Siting> laid) {
        List<String[]> facts = new ArrayList<>();
        facts.add(new String[] {"Type", subject.family().map(family -> family.name()).orElse("unknown: " + subject.aid().getFamilyKey())});
        facts.add(new String[] {"Rule set", subject.rules().descriptor().title() + ", edition " + subject.rules().edition()});
        laid.ifPresent(siting -> {
            boolean runway = subject.host() instanceof RunwayEnd;
            facts.add(new String[] {"Side", subject.aid().getSide().getName().toLowerCase(Locale.ROOT)});
            facts.add(new String[] {"Approach slope", Numbers.angle(siting.slopeDeg())});
            facts.add(new String[] {runway ? "Distance from threshold" : "Distance from hover point",
                    Numbers.metresAndFeet(siting.distanceM())});
            facts.add(new String[] {"Lowest on-slope signal", Numbers.angle(siting.lowestOnSlopeDeg())});
            facts.add(new String[] {runway ? "Eye height over threshold (MEHT)" : "Eye height at the hover",
                    Numbers.metresAndFeet(siting.eyeHeightM())});
            siting.wheelClearanceM().ifPresent(clearance -> facts.add(new String[] {"Wheel clearance, most demanding group",
                Numbers.metresAndFeet(clearance)}));
            subject.solved().value().ifPresent(solved -> facts.add(new String[] {"Distance that the rule set gives",
                Numbers.metresAndFeet(solved.distanceM())}));
        });
        EquipmentType type = subject.aid().getEquipment();
        if (type != null) {
            facts.add(new String[] {"Equipment", type.getName() + ", " + Numbers.orUnknown(type.getLampsPerUnit()) + " lamps of "
                    + Numbers.orUnknown(type.getLampPowerW(), "W") + " a unit, " + Numbers.orUnknown(type.getSupply())});
        }
        return facts;
    }

    private void units(Siting siting) {
        html.element("h3", "Light units").open("table").row("th", List.of("Unit", "Bar", "Along m", "Right m", "Lens above datum m",
                "Lens elevation m",
                "Setting", "Setting °"));
        double datum = subject.frame().value().map(frame -> frame.originElevationM()).orElse(0.0);
        for (UnitPlan unit : siting.units()) {
            html.row("td", List.of(unit.id(), String.valueOf(unit.bar()), number(unit.place().alongM()), number(unit.place().rightM()),
                    number(unit.place().heightM()), number(unit.place().heightM() + datum), Angles.format(unit.settingDeg()),
                    String.format(Locale.ROOT, "%.4f", unit.settingDeg())));
        }
        html.close("table");
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.2f", value);
    }

    private void wheels(Siting siting) {
        if (subject.host().getRegularGroups().isEmpty()) {
            return;
        }
        html.element("h3", "Wheel clearance over the threshold").open("table").row("th", List.of("Aeroplane group", "Eye-to-wheel m",
                "Wheel clearance m", "Desired m", "Minimum m", "Margin to desired m"));
        for (AeroplaneGroup group : subject.host().getRegularGroups()) {
            if (group.getEyeToWheelM() == null) {
                html.row("td", List.of(Projects.label(group), "not known", "", "", "", ""));
                continue;
            }
            double clearance = siting.eyeHeightM() - group.getEyeToWheelM();
            Optional<WheelClearanceTable.Group> band = subject.rules().wheelClearance()
                    .flatMap(table -> table.group(group.getEyeToWheelM()));
            html.row("td", List.of(Projects.label(group), number(group.getEyeToWheelM()), number(clearance),
                    band.map(one -> number(one.desiredM())).orElse("-"), band.map(one -> number(one.minimumM())).orElse("-"),
                    band.map(one -> number(clearance - one.desiredM())).orElse("-")));
        }
        html.close("table");
    }

    private void surface(Siting siting) {
        html.element("h3", "Obstacle surface");
        if (siting.surface().isEmpty()) {
            html.element("p class=\"alert\"", "There is no obstacle surface; the notes say why.");
            return;
        }
        SurfacePlan plan = siting.surface().get();
        String spread = plan.divergenceDeg().isPresent() ? Numbers.plain(plan.divergenceDeg().getAsDouble()) + "° each side"
                : Numbers.plain(plan.divergencePercent()) + " % each side";
        html.facts(List.of(new String[] {"Slope", Numbers.angle(plan.slopeDeg())},
                new String[] {"Inner edge", Numbers.metres(plan.innerEdgeM()) + " long, " + Numbers.metres(plan.startAlongM()) + " along, "
                        + Numbers.metres(plan.startHeightM()) + " above the datum"},
                new String[] {"Divergence", spread}, new String[] {"Length", Numbers.metres(plan.lengthM())}));
        html.open("table").row("th", List.of("Obstacle", "Kind", "Governing place: along m, right m", "Top m", "Surface m", "Margin m",
                "Accuracy m"));
        for (Obstacle obstacle : project.getAerodrome().getObstacles()) {
            html.row("td", obstacle(obstacle, plan));
        }
        html.close("table");
        html.element("p class=\"small\"",
                "Heights are differences of elevations from the datum of the runway end or helipad, without curvature. "
                + "Survey accuracy is added on the safe side.");
    }

    private List<String> obstacle(Obstacle obstacle, SurfacePlan plan) {
        List<String> cells = new ArrayList<>(List.of(Projects.label(obstacle), obstacle.getKind().getName().toLowerCase(Locale.ROOT)));
        try {
            Optional<Penetration> found = ObstacleShapes.compare(obstacle, subject.frame().value().orElseThrow(), plan.geometry());
            if (found.isEmpty()) {
                cells.addAll(List.of("outside the surface", "", "", "", accuracy(obstacle)));
            } else {
                Penetration worst = found.get();
                cells.addAll(List.of(number(worst.point().alongM()) + ", " + number(worst.point().rightM()), number(worst.point()
                        .heightM()),
                        number(worst.limitM()), number(-worst.excessM()), accuracy(obstacle)));
            }
        } catch (SitingException e) {
            cells.addAll(List.of("not evaluated: " + e.getMessage(), "", "", "", accuracy(obstacle)));
        }
        return cells;
    }

    private static String accuracy(Obstacle obstacle) {
        return "h " + Numbers.orUnknown(obstacle.getHorizontalAccuracyM()) + ", v " + Numbers.orUnknown(obstacle.getVerticalAccuracyM());
    }

    private void notes(Siting siting) {
        if (!siting.notes().isEmpty()) {
            html.element("h3", "Notes").open("ul");
            siting.notes().forEach(note -> html.element("li", note));
            html.close("ul");
        }
    }

    private void drawings(Siting siting) {
        if (subject.frame().value().isEmpty()) {
            html.element("p class=\"alert\"", "No drawings: " + subject.frame().reason() + ".");
            return;
        }
        DrawnAid drawn = new DrawnAid(project, subject.host(), subject.aid(), siting, subject.frame().value().get());
        double view = subject.host() instanceof RunwayEnd ? RUNWAY_VIEW_M : HELIPAD_VIEW_M;
        for (Scene scene : List.of(PlanScene.layout(drawn), PlanScene.surface(drawn), SectionScene.of(drawn),
                PilotScene.of(drawn, PilotScene.eyeOnSlope(drawn, view)))) {
            html.open("div class=\"drawing\"").element("h3", scene.title()).raw(pictures.add(scene)).close("div");
        }
    }
}
