package slopewright.report.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

import slopewright.checks.AidSubject;
import slopewright.geometry.FramePoint;
import slopewright.geometry.Penetration;
import slopewright.model.LightUnit;
import slopewright.model.MeasuredUnit;
import slopewright.model.Obstacle;
import slopewright.model.Project;
import slopewright.siting.Siting;
import slopewright.siting.SitingException;
import slopewright.siting.UnitPlan;
import slopewright.siting.site.ObstacleShapes;
import slopewright.siting.site.SiteFrame;

/** What the indicator gives as it was measured: the same quantities as planned, worked out again from the measured units. */
final class AsBuiltSection {

    private final Html html;
    private final Project project;
    private final AidSubject subject;

    AsBuiltSection(Html html, Project project, AidSubject subject) {
        this.html = html;
        this.project = project;
        this.subject = subject;
    }

    void write(Siting planned) {
        html.element("h2 class=\"flow\"", "As built");
        List<String> missing = new ArrayList<>();
        List<UnitPlan> units = planned.units().stream().map(unit -> built(unit, missing)).toList();
        if (missing.size() == units.size()) {
            html.element("p", "No unit has a measured angle yet; the results as built follow once they are entered.");
            return;
        }
        Siting built;
        try {
            built = subject.family().orElseThrow().assess(subject.request().value().orElseThrow(
                    () -> new SitingException(subject.request().reason())), subject.rules(), units, planned.nominalDistanceM());
        } catch (SitingException e) {
            html.element("p class=\"alert\"", "The results as built can not be worked out: " + e.getMessage() + ".");
            return;
        }
        html.table("numbers", List.of(40, 20, 20, 20), List.of("Result", "Planned", "As built", "Change"));
        row("Distance m", OptionalDouble.of(planned.distanceM()), OptionalDouble.of(built.distanceM()));
        row("Lowest on-slope signal \u00b0", OptionalDouble.of(planned.lowestOnSlopeDeg()), OptionalDouble.of(built.lowestOnSlopeDeg()));
        row("Eye height m", OptionalDouble.of(planned.eyeHeightM()), OptionalDouble.of(built.eyeHeightM()));
        row("Wheel clearance m", planned.wheelClearanceM(), built.wheelClearanceM());
        row("Least margin of an obstacle m", margin(planned), margin(built));
        html.endTable();
        if (!missing.isEmpty()) {
            html.element("p class=\"small\"", "Units without a measured angle count as planned: " + String.join(", ", missing) + ".");
        }
    }

    private UnitPlan built(UnitPlan unit, List<String> missing) {
        Optional<MeasuredUnit> found = subject.aid().getUnits().stream().filter(one -> unit.id().equals(one.getLabel())).findFirst()
                .map(LightUnit::getMeasured);
        if (found.map(MeasuredUnit::getSettingDeg).isEmpty()) {
            missing.add(unit.id());
        }
        if (found.isEmpty()) {
            return unit;
        }
        MeasuredUnit measured = found.get();
        double datum = subject.frame().value().map(SiteFrame::originElevationM).orElse(Double.NaN);
        boolean level = measured.getLensElevationM() != null && !Double.isNaN(datum);
        FramePoint place = new FramePoint(measured.getAlongM() == null ? unit.place().alongM() : measured.getAlongM(),
                measured.getRightM() == null ? unit.place().rightM() : measured.getRightM(),
                level ? measured.getLensElevationM() - datum : unit.place().heightM());
        UnitPlan placed = unit.at(place);
        return measured.getSettingDeg() == null ? placed : placed.raised(measured.getSettingDeg() - unit.settingDeg());
    }

    private OptionalDouble margin(Siting siting) {
        if (siting.surface().isEmpty() || project.getAerodrome() == null || subject.frame().value().isEmpty()) {
            return OptionalDouble.empty();
        }
        double worst = Double.POSITIVE_INFINITY;
        for (Obstacle obstacle : project.getAerodrome().getObstacles()) {
            try {
                Optional<Penetration> found = ObstacleShapes.compare(obstacle, subject.frame().value().get(), siting.surface().get()
                        .geometry());
                worst = Math.min(worst, found.map(one -> -one.excessM()).orElse(Double.POSITIVE_INFINITY));
            } catch (SitingException e) {
                return OptionalDouble.empty();
            }
        }
        return Double.isInfinite(worst) ? OptionalDouble.empty() : OptionalDouble.of(worst);
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
