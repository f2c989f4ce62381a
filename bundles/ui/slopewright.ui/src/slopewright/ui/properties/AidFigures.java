package slopewright.ui.properties;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.Attempt;
import slopewright.evaluation.GroundUsed;
import slopewright.evaluation.WheelClearance;
import slopewright.evaluation.obstacles.ObstacleComparison;
import slopewright.evaluation.obstacles.SurfaceComparison;
import slopewright.evaluation.obstacles.Uncompared;
import slopewright.evaluation.portable.HandUnit;
import slopewright.evaluation.portable.PlannedDescent;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.MessageRenderer;
import slopewright.messages.Words;
import slopewright.model.ApproachAid;
import slopewright.siting.Siting;
import slopewright.siting.magnetic.SiteVariation;
import slopewright.standards.Citation;
import slopewright.standards.WheelClearanceTable;
import slopewright.ui.MessageTexts;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.units.Quantity;
import slopewright.ui.units.QuantityFormat;

/** What follows from an approach aid as it stands, as the evaluation of its document says: distance, eye height, clearance and margin. */
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

    /** A formula is shown where it gives the number to the millimetre: another unit than the one at the distance may bound the height. */
    private static final double SAME_M = 0.0005;

    private final QuantityFormat format;
    private final MessageRenderer renderer = MessageTexts.renderer();
    private final List<Figure> figures = new ArrayList<>();

    private AidFigures(QuantityFormat format) {
        this.format = format;
    }

    static List<Figure> of(ApproachAid aid, QuantityFormat format) {
        Optional<ProjectDocument> document = ProjectDocument.of(aid);
        if (document.isEmpty()) {
            return List.of();
        }
        AidFigures all = new AidFigures(format);
        Attempt<AidEvaluation> evaluation = document.get().evaluation(aid);
        Attempt<Siting> siting = evaluation.then(AidEvaluation::siting);
        if (siting.value().isPresent()) {
            all.add(evaluation.orThrow(), siting.orThrow());
        } else {
            String reason = all.renderer.render(siting.reason().orElseThrow());
            all.add("figure.derived", PropertyTexts.get("figure.unknown", reason), reason);
        }
        return all.figures;
    }

    private void add(String name, String text, String why) {
        figures.add(new Figure(PropertyTexts.get(name), text, why));
    }

    private void add(AidEvaluation evaluation, Siting siting) {
        String angle = format.showWithUnit(siting.lowestOnSlopeDeg(), Quantity.ANGLE);
        add("figure.distance", length(siting.distanceM()), PropertyTexts.get("figure.distance.why"));
        add("figure.onSlope", angle, PropertyTexts.get("figure.onSlope.why"));
        add("figure.eyeHeight", length(siting.mehtM()), PropertyTexts.get("figure.eyeHeight.why", angle) + eyeHeightStep(siting));
        if (siting.nominalEyeHeightM().isPresent()) {
            add("figure.nominalEyeHeight", length(siting.nominalEyeHeightM().getAsDouble()),
                    PropertyTexts.get("figure.nominalEyeHeight.why"));
        }
        evaluation.wheelClearances().stream().min(Comparator.comparingDouble(WheelClearance::clearanceM))
                .ifPresent(least -> wheels(evaluation, least, siting.mehtM()));
        siting.surface().ifPresent(surface -> add("figure.surface", format.showWithUnit(surface.slopeDeg(), Quantity.ANGLE),
                PropertyTexts.get("figure.surface.why", length(-surface.startAlongM()), texts(surface.citations().stream()))));
        add("figure.ground", renderer.render(GroundUsed.of(evaluation)), PropertyTexts.get("figure.ground.why"));
        obstacles(evaluation.obstacles());
        if (Boolean.TRUE.equals(evaluation.aid().getPortable())) {
            descent(evaluation);
            hands(evaluation, siting);
        }
    }

    /** The slope of the planned descent, beside what the hand sets. */
    private void descent(AidEvaluation evaluation) {
        Attempt.of(() -> PlannedDescent.of(evaluation)).value().flatMap(found -> found).ifPresent(found -> add("figure.descent",
                PropertyTexts.get("figure.descent.text", degrees(found.plannedDeg()), degrees(found.setDeg()), renderer.write(Words.min(Math
                        .abs(found.offMin())))), PropertyTexts.get("figure.descent.why")));
    }

    /** What the hand does at each unit of a portable aid, with the magnetic variation of today. */
    private void hands(AidEvaluation evaluation, Siting siting) {
        Attempt<List<HandUnit>> hands = Attempt.of(() -> HandUnit.of(siting, evaluation.frame().orThrow().bearingDeg(),
                SiteVariation.of(evaluation.host(), LocalDate.now()), evaluation.aid().getEquipment()));
        for (HandUnit hand : hands.value().orElse(List.of())) {
            String unit = hand.unit().id();
            String which = siting.units().size() == 1 ? "" : " (" + unit + ")";
            addOf("figure.walk", which, PropertyTexts.get("figure.walk.text", degrees(hand.walkMagneticDeg()), length(hand.walkM())),
                    PropertyTexts.get("figure.walk.why", unit));
            hand.plate().ifPresent(reading -> addOf("figure.plate", which, degrees(reading.markDeg()),
                    PropertyTexts.get("figure.plate.why", unit, degrees(reading.zeroMagneticDeg()), degrees(hand.beamMagneticDeg()))));
            hand.slope().ifPresent(mark -> addOf("figure.mark", which, degrees(mark.markDeg()), PropertyTexts.get("figure.mark.why", unit,
                    renderer.write(Words.min(Math.abs(mark.offMin()))))));
        }
    }

    private void addOf(String name, String which, String text, String why) {
        figures.add(new Figure(PropertyTexts.get(name) + which, text, why));
    }

    private String degrees(double valueDeg) {
        return renderer.write(Words.degrees(valueDeg));
    }

    private String eyeHeightStep(Siting siting) {
        double lensM = siting.reference().heightM();
        double heightM = lensM + siting.distanceM() * Math.tan(Math.toRadians(siting.lowestOnSlopeDeg()));
        return Math.abs(heightM - siting.mehtM()) > SAME_M ? "" : step("step.meht", Words.m(lensM), Words.m(siting.distanceM()),
                Words.deg(siting.lowestOnSlopeDeg()), Words.m(siting.mehtM()));
    }

    private String step(String key, Argument... numbers) {
        return "\n" + renderer.render(Message.of(key, numbers));
    }

    private void wheels(AidEvaluation evaluation, WheelClearance least, double mehtM) {
        String source = evaluation.rules().wheelClearance().map(WheelClearanceTable::citation).map(AidFigures::source).orElse("");
        add("figure.wheels", length(least.clearanceM()), PropertyTexts.get("figure.wheels.why", MessageTexts.label(least.group()))
                + step("step.wheel-clearance", Words.m(mehtM), Words.m(least.eyeToWheelM()), Words.m(least.clearanceM())) + source);
    }

    private static String source(Citation citation) {
        return "\n" + PropertyTexts.get("figure.source", MessageTexts.of(citation.text()), OutcomeTexts.provenance(citation.provenance()));
    }

    private static String texts(Stream<Citation> citations) {
        return citations.map(citation -> MessageTexts.of(citation.text())).distinct().collect(Collectors.joining("; "));
    }

    private void obstacles(Attempt<SurfaceComparison> attempt) {
        if (attempt.value().isEmpty()) {
            String reason = renderer.render(attempt.reason().orElseThrow());
            add("figure.margin", PropertyTexts.get("figure.unknown", reason), reason);
            return;
        }
        SurfaceComparison comparison = attempt.orThrow();
        Optional<ObstacleComparison> governing = comparison.governing();
        if (governing.isPresent()) {
            addMargin(comparison, OutcomeTexts.signed(OptionalDouble.of(governing.get().marginM()), "m") + ", " + governing.get().label(),
                    PropertyTexts.get("figure.margin.why", governing.get().label()));
        } else {
            String none = PropertyTexts.get(comparison.isUnsurveyed() ? "figure.margin.unsurveyed" : "figure.margin.none");
            addMargin(comparison, none, none);
        }
    }

    /** What could not be compared stands in the figure itself: a margin without it would be taken for the whole truth. */
    private void addMargin(SurfaceComparison comparison, String text, String why) {
        if (comparison.uncompared().isEmpty()) {
            add("figure.margin", text, why);
            return;
        }
        String open = PropertyTexts.get("figure.uncompared", renderer.write(Words.names(comparison.uncompared().stream()
                .map(Uncompared::label).toList())));
        add("figure.margin", open + " " + text, open + "\n" + why);
    }

    private String length(double valueM) {
        return renderer.write(Words.m(valueM));
    }
}
