package slopewright.report.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import slopewright.drawing.pilot.PilotScene;
import slopewright.drawing.plan.PlanScene;
import slopewright.drawing.scene.DrawnAid;
import slopewright.drawing.scene.Scene;
import slopewright.drawing.section.SectionScene;
import slopewright.drawing.signal.SignalScene;
import slopewright.evaluation.AidEvaluation;
import slopewright.geometry.Angles;
import slopewright.messages.Message;
import slopewright.model.AeroplaneGroup;
import slopewright.model.EquipmentType;
import slopewright.model.Project;
import slopewright.model.RunwayEnd;
import slopewright.model.util.Projects;
import slopewright.siting.Siting;
import slopewright.siting.UnitPlan;
import slopewright.standards.WheelClearanceTable;

/** The chapter of one approach aid: layout, calculation, heights, signals, obstacles, drawings. */
final class AidChapter {

    private static final double RUNWAY_VIEW_M = 1500;
    private static final double HELIPAD_VIEW_M = 300;

    private final Html html;
    private final Project project;
    private final AidEvaluation subject;
    private final Pictures pictures;
    private final boolean atRunway;

    AidChapter(Html html, Project project, AidEvaluation subject, Pictures pictures) {
        this.html = html;
        this.project = project;
        this.subject = subject;
        this.pictures = pictures;
        atRunway = subject.host() instanceof RunwayEnd;
    }

    void write() {
        Optional<Siting> laid = subject.siting().value();
        html.facts(about(laid));
        if (laid.isEmpty()) {
            html.element("p class=\"alert\"", "No layout could be worked out: " + subject.siting().reason().map(Message::english).orElse("") + ".");
            return;
        }
        Siting siting = laid.get();
        units(siting);
        new CalculationSection(html, subject).write(siting);
        wheels(siting);
        new SignalTable(html).write(siting);
        new ObstacleSection(html, project, subject).write(siting);
        new ToleranceSection(html, subject).write();
        if (!siting.notes().isEmpty()) {
            html.section("Notes").list(siting.notes().stream().map(note -> note.english()).toList());
        }
        drawings(siting);
    }

    private List<String[]> about(Optional<Siting> laid) {
        List<String[]> facts = new ArrayList<>();
        facts.add(new String[] {"Type", subject.family().map(family -> family.name()).orElse("unknown: " + subject.aid().getFamilyKey())});
        facts.add(new String[] {"Rule set", OutcomeTables.ruleSet(subject.rules())});
        laid.ifPresent(siting -> {
            facts.add(new String[] {"Side", subject.aid().getSide().getName().toLowerCase(Locale.ROOT)});
            facts.add(new String[] {"Approach slope", Numbers.angle(siting.slopeDeg())});
            facts.add(new String[] {atRunway ? "Distance from the threshold" : "Distance from the hover point",
                    Numbers.metresAndFeet(siting.distanceM())});
            facts.add(new String[] {"Lowest on-slope signal", Numbers.angle(siting.lowestOnSlopeDeg())});
            facts.add(new String[] {atRunway ? "Eye height over the threshold (MEHT)" : "Eye height at the hover point",
                    Numbers.metresAndFeet(siting.mehtM())});
            siting.wheelClearanceM().ifPresent(clearance -> facts.add(new String[] {"Wheel clearance, most demanding group",
                Numbers.metresAndFeet(clearance)}));
        });
        EquipmentType type = subject.aid().getEquipment();
        if (type != null) {
            facts.add(new String[] {"Equipment", type.getName() + ", " + Numbers.orUnknown(type.getLampsPerUnit()) + " lamps of "
                    + Numbers.orUnknown(type.getLampPowerW(), "W") + " a unit, " + Numbers.orUnknown(type.getSupply())});
        }
        return facts;
    }

    private void units(Siting siting) {
        html.section("Light units").table("numbers", List.of(9, 7, 12, 12, 15, 15, 15, 15), List.of("Unit", "Bar", "Along m",
                "Right m",
                "Lens above datum m", "Lens elevation m", "Setting", "Setting \u00b0"));
        double datum = subject.frame().value().map(frame -> frame.originElevationM()).orElse(Double.NaN);
        for (UnitPlan unit : siting.units()) {
            double height = unit.place().heightM();
            html.row("td", List.of(unit.id(), String.valueOf(unit.bar()), Numbers.two(unit.place().alongM()), Numbers.two(unit.place()
                    .rightM()), Numbers.two(height), Double.isNaN(datum) ? "not known" : Numbers.two(height + datum),
                    Angles.format(unit.settingDeg()), String.format(Locale.ROOT, "%.4f", unit.settingDeg())));
        }
        html.endTable().element("p class=\"small\"", "Along: from the " + (atRunway ? "threshold" : "hover point")
                + " in the landing direction. Right: from the centre line, right of the landing direction; left is negative.");
        if (siting.units().size() > 1) {
            double least = siting.units().stream().mapToDouble(unit -> unit.place().heightM()).min().orElse(0);
            double most = siting.units().stream().mapToDouble(unit -> unit.place().heightM()).max().orElse(0);
            html.element("p class=\"small\"", String.format(Locale.ROOT, "Greatest difference in level between lenses: %.3f m.", most
                    - least));
        }
    }

    private void wheels(Siting siting) {
        if (subject.host().getRegularGroups().isEmpty()) {
            return;
        }
        html.open("div class=\"keep\"").section("Wheel clearance over the threshold").table("numbers", List.of(28, 14, 14, 14, 14,
                16), List.of(
                "Aeroplane group", "Eye-to-wheel m", "Clearance m", "Desired m", "Minimum m", "Margin to desired m"));
        for (AeroplaneGroup group : subject.host().getRegularGroups()) {
            if (group.getEyeToWheelM() == null) {
                html.row("td", List.of(Projects.label(group), "not known", "", "", "", ""));
                continue;
            }
            double clearance = siting.mehtM() - group.getEyeToWheelM();
            Optional<WheelClearanceTable.Group> band = subject.rules().wheelClearance()
                    .flatMap(table -> table.group(group.getEyeToWheelM()));
            html.row("td", List.of(Projects.label(group), Numbers.two(group.getEyeToWheelM()), Numbers.two(clearance),
                    band.map(one -> Numbers.two(one.desiredM())).orElse("-"), band.map(one -> Numbers.two(one.minimumM())).orElse("-"),
                    band.map(one -> Numbers.two(clearance - one.desiredM())).orElse("-")));
        }
        html.endTable().close("div");
    }

    private void drawings(Siting siting) {
        if (subject.frame().value().isEmpty()) {
            html.element("p class=\"alert\"", "No drawings: " + subject.frame().reason() + ".");
            return;
        }
        DrawnAid drawn = new DrawnAid(project, subject.host(), subject.aid(), siting, subject.frame().value().get());
        List<Scene> scenes = new ArrayList<>(List.of(PlanScene.layout(drawn), PlanScene.detail(drawn), SectionScene.near(drawn),
                SectionScene.of(drawn)));
        if (siting.surface().isPresent()) {
            scenes.add(PlanScene.surface(drawn));
        }
        if (SignalScene.fits(siting)) {
            scenes.add(SignalScene.of(drawn));
        }
        scenes.add(PilotScene.of(drawn, PilotScene.eyeOnSlope(drawn, atRunway ? RUNWAY_VIEW_M : HELIPAD_VIEW_M)));
        html.section("Drawings");
        scenes.forEach(scene -> html.figure(scene.title(), pictures.add(scene)));
    }
}
