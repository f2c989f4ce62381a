package slopewright.evaluation.landing;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.portable.SlopeScale;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.EquipmentType;
import slopewright.siting.IndicatorFamily;
import slopewright.siting.SitingException;
import slopewright.standards.CitedValue;
import slopewright.standards.RuleSet;
import slopewright.standards.RuleSets;

/**
 * The slopes that a unit can be set to, evenly spaced.
 *
 * @param fromDeg lowest, decimal degrees
 * @param toDeg   highest, decimal degrees
 * @param stepDeg from one to the next, decimal degrees
 * @param source  where the range comes from
 */
public record SettableSlopes(double fromDeg, double toDeg, double stepDeg, Message source) {

    /** The step that is tried where nobody says how finely a unit is set, decimal degrees. */
    public static final double USUAL_STEP_DEG = 0.1;

    private static final String FROM = "setting-range-from-deg";
    private static final String TO = "setting-range-to-deg";
    private static final String TAKEN_OVER = "heliport-sector.";
    private static final int MOST = 2000;
    private static final double ROUNDING = 1e-9;

    /**
     * Checks the numbers.
     *
     * @throws SitingException where they make no range, or one of too many steps
     */
    public SettableSlopes {
        Objects.requireNonNull(source);
        if (!(stepDeg > 0) || !(fromDeg > 0) || !(toDeg >= fromDeg) || !(toDeg < 45) || (toDeg - fromDeg) / stepDeg > MOST) {
            throw new SitingException(Message.of("landing.no-range", Words.degrees(fromDeg), Words.degrees(toDeg), Words.deg(stepDeg)));
        }
    }

    /**
     * Reads the range of the unit of an aid: of its equipment, else of its family in the rule set, else that of a sector unit, taken over.
     *
     * @param evaluation the evaluation of the aid
     * @param stepDeg    from one slope to the next, decimal degrees; where the unit has a scale, the next whole number of its marks
     * @return the slopes
     * @throws SitingException where the range of the equipment makes none
     */
    public static SettableSlopes of(AidEvaluation evaluation, double stepDeg) {
        EquipmentType type = evaluation.aid().getEquipment();
        if (type != null && type.getMinSettingDeg() != null && type.getMaxSettingDeg() != null) {
            return onMarks(type, type.getMinSettingDeg(), type.getMaxSettingDeg(), stepDeg,
                    Message.of("landing.range-of-equipment", Words.name(String.valueOf(type.getName()))));
        }
        RuleSet rules = evaluation.rules();
        String family = evaluation.family().map(IndicatorFamily::ruleKey).orElse("") + ".";
        Optional<CitedValue> from = rules.find(family + FROM);
        Optional<CitedValue> to = rules.find(family + TO);
        if (from.isPresent() && to.isPresent()) {
            return onMarks(type, from.get().value(), to.get().value(), stepDeg,
                    Message.of("landing.range-of-rules", from.get().citation().text()));
        }
        RuleSet other = RuleSets.find("icao").orElseThrow();
        return onMarks(type, other.value(TAKEN_OVER + FROM).value(), other.value(TAKEN_OVER + TO).value(), stepDeg,
                Message.of("landing.range-taken-over", other.value(TAKEN_OVER + FROM).citation().text()));
    }

    /** Between two marks of its scale a unit cannot be set: the slopes are those of the marks, every one or every so many. */
    private static SettableSlopes onMarks(EquipmentType type, double fromDeg, double toDeg, double stepDeg, Message source) {
        Optional<SlopeScale> scale = SlopeScale.of(type).filter(found -> stepDeg > 0);
        if (scale.isEmpty()) {
            return new SettableSlopes(fromDeg, toDeg, stepDeg, source);
        }
        double mark = scale.get().stepDeg();
        return new SettableSlopes(Math.ceil(fromDeg / mark - ROUNDING) * mark, toDeg, Math.ceil(stepDeg / mark - ROUNDING) * mark, source);
    }

    /** Returns the slopes, the lowest first, decimal degrees. */
    public List<Double> degrees() {
        List<Double> all = new ArrayList<>();
        for (int i = 0; fromDeg + i * stepDeg <= toDeg + stepDeg * 1e-6; i++) {
            all.add(Math.round((fromDeg + i * stepDeg) * 1e6) / 1e6);
        }
        return all;
    }
}
