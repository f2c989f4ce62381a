package slopewright.witness;

import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * An indicator as it stands.
 *
 * @param edition rule text it is judged by
 * @param family kind
 * @param slopeDeg approach slope, degrees
 * @param axisTurnDeg turn of the beam axis, positive where the beam points to the right as the landing pilot sees it, degrees
 * @param beamHalfWidthDeg azimuth half width in which lights are seen; NaN for no limit, degrees
 * @param units the units, from the runway outward, near bar first
 */
public record Layout(Edition edition, Family family, double slopeDeg, double axisTurnDeg, double beamHalfWidthDeg,
        List<LightUnit> units) {

    /** Copies the units. */
    public Layout {
        units = List.copyOf(units);
    }

    /** Distance from the threshold of the mean of the reference units (the bars of a T form, the near bar of bars), metres. */
    public double referenceAlongM() {
        return mean(LightUnit::alongM);
    }

    /** Mean lens height of the reference units, metres. */
    public double referenceHeightM() {
        return mean(LightUnit::heightM);
    }

    /** Least setting of all units: angle A of a row, degrees. */
    public double leastSettingDeg() {
        return units.stream().mapToDouble(LightUnit::settingDeg).min().orElseThrow();
    }

    /** The unit of this name. */
    public LightUnit unit(String id) {
        return units.stream().filter(unit -> unit.id().equals(id)).findFirst().orElseThrow();
    }

    private double mean(ToDoubleFunction<LightUnit> quantity) {
        String wanted = family.tForm() ? "bar" : units.get(0).bar();
        double sum = 0;
        int count = 0;
        for (LightUnit unit : units) {
            if (unit.bar().equals(wanted)) {
                sum += quantity.applyAsDouble(unit);
                count++;
            }
        }
        return sum / count;
    }
}
