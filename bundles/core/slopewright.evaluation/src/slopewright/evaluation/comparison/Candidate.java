package slopewright.evaluation.comparison;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

import org.eclipse.emf.ecore.util.EcoreUtil;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.Attempt;
import slopewright.evaluation.obstacles.ObstacleComparison;
import slopewright.messages.Message;
import slopewright.model.ApproachAid;
import slopewright.model.EquipmentType;
import slopewright.model.Project;
import slopewright.model.RunwayEnd;
import slopewright.model.util.Ids;
import slopewright.siting.IndicatorFamily;
import slopewright.siting.Side;
import slopewright.siting.Siting;
import slopewright.standards.RuleSet;

/**
 * One family at a site, evaluated as a proposal: laid out at the ground that is there and compared with everything that stands there.
 *
 * @param family     the family
 * @param rules      the rule set under which it is laid out
 * @param proposal   the evaluation of the proposed aid; a reason where it cannot be laid out
 * @param standing   the evaluation of the aid of this family that stands there; empty where none does
 * @param objections why it does not fit; empty where nothing stands against it
 * @param open       what nobody knows yet; empty where everything is known
 * @param remarks    what a reader must know: whose rule set, which ground, how high the lenses
 * @param range      how far it is seen
 * @param context    how many units it needs and what feeds them
 */
public record Candidate(IndicatorFamily family, RuleSet rules, Attempt<AidEvaluation> proposal, Optional<AidEvaluation> standing,
        List<Message> objections, List<Message> open, List<Message> remarks, VisibleRange range, OperationalContext context) {

    /** What a proposal comes to before any rule is asked. */
    public enum Fit {
        /** It can be laid out, is allowed, clears everything that stands there and the threshold. */
        FITS,
        /** Nothing stands against it, but something is not known. */
        TO_CLEAR_UP,
        /** Something stands against it. */
        DOES_NOT_FIT;

        /** Returns the word used in output. */
        public String key() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /** Copies the lists. */
    public Candidate {
        Objects.requireNonNull(family);
        Objects.requireNonNull(rules);
        Objects.requireNonNull(proposal);
        Objects.requireNonNull(standing);
        objections = List.copyOf(objections);
        open = List.copyOf(open);
        remarks = List.copyOf(remarks);
    }

    /**
     * Returns a copy of the aid that is proposed, laid out as it was proposed, which hangs nowhere and has no ids yet.
     *
     * @param project the project that it is meant for, of which it has its equipment
     * @throws slopewright.siting.SitingException where the family cannot be laid out, with the reason
     */
    public ApproachAid aidFor(Project project) {
        ApproachAid proposed = proposal.orThrow().aid();
        ApproachAid aid = EcoreUtil.copy(proposed);
        aid.setSlopeDeg(siting().orElseThrow().slopeDeg());
        aid.getInspections().clear();
        Ids.elements(aid).forEach(element -> element.setId(null));
        if (proposed.getEquipment() != null) {
            aid.setEquipment(Ids.find(project, proposed.getEquipment().getId()).filter(EquipmentType.class::isInstance)
                    .map(EquipmentType.class::cast).orElse(null));
        }
        return aid;
    }

    /** Returns what it comes to. */
    public Fit fit() {
        return !objections.isEmpty() ? Fit.DOES_NOT_FIT : open.isEmpty() ? Fit.FITS : Fit.TO_CLEAR_UP;
    }

    /** Returns whether it fits and nothing is left to clear up. */
    public boolean fits() {
        return fit() == Fit.FITS;
    }

    /** Returns the proposed layout; empty where it cannot be laid out. */
    public Optional<Siting> siting() {
        return proposal.value().flatMap(found -> found.siting().value());
    }

    /** Returns the side of the runway, seen in the landing direction; empty at a helipad, or where it cannot be laid out. */
    public Optional<Side> side() {
        boolean atRunway = proposal.value().filter(found -> found.host() instanceof RunwayEnd).isPresent();
        return siting().filter(found -> atRunway).map(found -> found.units().stream().allMatch(unit -> unit.place().rightM() < 0)
                ? Side.LEFT : found.units().stream().allMatch(unit -> unit.place().rightM() > 0) ? Side.RIGHT : Side.BOTH);
    }

    /** Returns the margin of the proposal: {@link AidEvaluation#marginM()}; empty where nothing lies within, or nobody knows. */
    public OptionalDouble obstacleMarginM() {
        return proposal.value().map(AidEvaluation::marginM).orElseGet(OptionalDouble::empty);
    }

    /** Returns the name of what governs the margin; empty where there is none. */
    public String governingObstacle() {
        return proposal.value().flatMap(AidEvaluation::governing).map(ObstacleComparison::label).orElse("");
    }

    /** Returns how far it is seen by day, metres: published, or estimated; empty where neither can be had. */
    public OptionalDouble rangeDayM() {
        return range.dayM();
    }

    /** Returns how far it is seen by night, metres: published, or estimated; empty where neither can be had. */
    public OptionalDouble rangeNightM() {
        return range.nightM();
    }

    /** Returns everything that a reader must know: what stands against it first, then what is not known, then remarks. */
    public List<Message> reasons() {
        List<Message> all = new ArrayList<>(objections);
        all.addAll(open);
        all.addAll(remarks);
        return all;
    }
}
