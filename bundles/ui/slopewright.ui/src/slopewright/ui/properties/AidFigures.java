package slopewright.ui.properties;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

import slopewright.checks.CheckResult;
import slopewright.checks.Outcome;
import slopewright.model.ApproachAid;
import slopewright.siting.Siting;
import slopewright.siting.SitingException;
import slopewright.siting.SurfacePlan;
import slopewright.siting.aid.AidLayouts;
import slopewright.standards.Citation;
import slopewright.standards.RuleSet;
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
        try {
            RuleSet rules = document.get().rules();
            add(figures, AidLayouts.asLaid(aid, rules), format, own(aid, document.get()));
        } catch (SitingException | IllegalArgumentException e) {
            figures.add(new Figure("Derived values", "not known: " + e.getMessage(), e.getMessage()));
        }
        own(aid, document.get()).stream().filter(outcome -> outcome.rule().equals(SURFACE_RULE) && outcome.margin().isPresent())
                .min((a, b) -> Double.compare(a.margin().getAsDouble(), b.margin().getAsDouble()))
                .ifPresent(worst -> figures.add(margin(worst, format)));
        return figures;
    }

    private static List<Outcome> own(ApproachAid aid, ProjectDocument document) {
        return document.lastResult().map(CheckResult::outcomes).orElse(List.of()).stream()
                .filter(outcome -> outcome.elementId().equals(aid.getId())).toList();
    }

    private static void add(List<Figure> figures, Siting siting, QuantityFormat format, List<Outcome> own) {
        String angle = format.showWithUnit(siting.lowestOnSlopeDeg(), Quantity.ANGLE);
        figures.add(new Figure("Distance", length(siting.distanceM(), format),
                "From the threshold or hover point to the row, the wing bar or the near bar." + sources(own, "DIST-")));
        figures.add(new Figure("Eye height (MEHT)", length(siting.eyeHeightM(), format),
                "On the lowest on-slope angle, " + angle + ", over the threshold." + sources(own, "EYE-")));
        if (siting.wheelClearanceM().isPresent()) {
            figures.add(new Figure("Wheels over threshold", length(siting.wheelClearanceM().getAsDouble(), format),
                    "Eye height less the eye-path-to-wheel-path height of the most demanding aeroplane in regular use."
                            + sources(own, "WHEEL-")));
        }
        siting.surface().ifPresent(surface -> figures.add(surface(surface, format)));
    }

    private static Figure surface(SurfacePlan surface, QuantityFormat format) {
        return new Figure("Obstacle surface", format.showWithUnit(surface.slopeDeg(), Quantity.ANGLE),
                "Rises outward from " + length(-surface.startAlongM(), format) + " before the threshold; "
                        + String.join("; ", surface.citations().stream().map(Citation::text).distinct().toList()) + ".");
    }

    private static String sources(List<Outcome> own, String rules) {
        return own.stream().filter(outcome -> outcome.rule().startsWith(rules)).flatMap(outcome -> outcome.citation().stream())
                .map(citation -> " Judged by " + citation.text() + " [" + citation.provenance().key() + "].").distinct()
                .collect(Collectors.joining());
    }

    private static String length(double valueM, QuantityFormat format) {
        return format.showWithUnit(Math.round(valueM * 100) / 100.0, Quantity.LENGTH);
    }

    private static Figure margin(Outcome worst, QuantityFormat format) {
        double margin = worst.margin().getAsDouble();
        String text = worst.unit().equals("m") ? length(margin, format) : String.format(Locale.ROOT, "%.2f %s", margin, worst.unit());
        return new Figure("Obstacle margin", text,
                worst.explanation() + worst.citation().map(citation -> " " + citation.text() + ".").orElse(""));
    }
}
