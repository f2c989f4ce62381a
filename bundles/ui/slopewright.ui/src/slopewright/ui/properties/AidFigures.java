package slopewright.ui.properties;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import slopewright.checks.CheckResult;
import slopewright.checks.Outcome;
import slopewright.checks.Workings;
import slopewright.checks.Workings.Step;
import slopewright.evaluation.AidLayouts;
import slopewright.evaluation.AidRequests;
import slopewright.model.ApproachAid;
import slopewright.model.Project;
import slopewright.model.util.Projects;
import slopewright.siting.Siting;
import slopewright.siting.SitingException;
import slopewright.siting.SurfacePlan;
import slopewright.standards.Citation;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.units.Quantity;
import slopewright.ui.units.QuantityFormat;

/** What follows from an approach aid as it stands: distance, eye height, clearance and margin, for people. */
final class AidFigures {

    /**
     * One figure.
     *
     * @param name what it is
     * @param text its value with unit
     * @param why  how it comes about and which clause it rests on
     */
    record Figure(String name, String text, String why) {
    }

    private static final String SURFACE_RULE = "OBS-01";

    private AidFigures() {
    }

    static List<Figure> of(ApproachAid aid, QuantityFormat format) {
        Optional<ProjectDocument> document = ProjectDocument.of(aid);
        if (document.isEmpty()) {
            return List.of();
        }
        List<Figure> figures = new ArrayList<>();
        List<Outcome> own = own(aid, document.get());
        try {
            add(figures, AidLayouts.asLaid(aid, document.get().rules()), aid, format, own);
        } catch (SitingException | IllegalArgumentException e) {
            figures.add(new Figure(PropertyTexts.get("figure.derived"), PropertyTexts.get("figure.unknown", e.getMessage()),
                    e.getMessage()));
        }
        own.stream().filter(outcome -> outcome.rule().equals(SURFACE_RULE) && outcome.margin().isPresent())
                .min((a, b) -> Double.compare(a.margin().getAsDouble(), b.margin().getAsDouble()))
                .ifPresent(worst -> figures.add(margin(worst, document.get().project())));
        return figures;
    }

    private static List<Outcome> own(ApproachAid aid, ProjectDocument document) {
        return document.lastResult().map(CheckResult::outcomes).orElse(List.of()).stream()
                .filter(outcome -> outcome.elementId().equals(aid.getId())).toList();
    }

    private static void add(List<Figure> figures, Siting siting, ApproachAid aid, QuantityFormat format, List<Outcome> own) {
        figures.add(new Figure(PropertyTexts.get("figure.distance"), length(siting.distanceM(), format),
                PropertyTexts.get("figure.distance.why") + sources(own, "DIST-")));
        figures.add(new Figure(PropertyTexts.get("figure.onSlope"), format.showWithUnit(siting.lowestOnSlopeDeg(), Quantity.ANGLE),
                PropertyTexts.get("figure.onSlope.why") + sources(own, "EYE-")));
        figures.add(new Figure(PropertyTexts.get("figure.eyeHeight"), length(siting.eyeHeightM(), format),
                PropertyTexts.get("figure.eyeHeight.why", format.showWithUnit(siting.lowestOnSlopeDeg(), Quantity.ANGLE))
                        + formula(Workings.eyeHeight(siting)) + sources(own, "EYE-")));
        if (siting.wheelClearanceM().isPresent()) {
            Optional<Step> formula = Projects.host(aid).flatMap(AidRequests::mostDemanding)
                    .flatMap(group -> Workings.wheelClearance(siting, group));
            figures.add(new Figure(PropertyTexts.get("figure.wheels"), length(siting.wheelClearanceM().getAsDouble(), format),
                    PropertyTexts.get("figure.wheels.why") + formula(formula) + sources(own, "WHEEL-")));
        }
        siting.surface().ifPresent(surface -> figures.add(surface(surface, format)));
    }

    private static String formula(Optional<Step> step) {
        return step.map(one -> "\n" + OutcomeTexts.working(one)).orElse("");
    }

    private static Figure surface(SurfacePlan surface, QuantityFormat format) {
        return new Figure(PropertyTexts.get("figure.surface"), format.showWithUnit(surface.slopeDeg(), Quantity.ANGLE),
                PropertyTexts.get("figure.surface.why", length(-surface.startAlongM(), format),
                        String.join("; ", surface.citations().stream().map(Citation::text).distinct().toList())));
    }

    private static String sources(List<Outcome> own, String rules) {
        return own.stream().filter(outcome -> outcome.rule().startsWith(rules)).flatMap(outcome -> outcome.citation().stream())
                .map(citation -> "\n" + PropertyTexts.get("figure.source", citation.text(), OutcomeTexts.provenance(citation.provenance())))
                .distinct().collect(Collectors.joining());
    }

    private static String length(double valueM, QuantityFormat format) {
        return format.showWithUnit(Math.round(valueM * 100) / 100.0, Quantity.LENGTH);
    }

    private static Figure margin(Outcome worst, Project project) {
        return new Figure(PropertyTexts.get("figure.margin"), OutcomeTexts.signed(worst.margin(), worst.unit()), worst.explanation()
                + ElementParts.lines(OutcomeTexts.workings(worst, project))
                + worst.citation().map(one -> "\n" + one.text() + ".").orElse(""));
    }
}
