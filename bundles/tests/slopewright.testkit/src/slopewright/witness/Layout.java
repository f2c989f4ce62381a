package slopewright.witness;

import java.util.List;

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
        return reference().stream().mapToDouble(LightUnit::alongM).average().orElseThrow();
    }

    /** Mean lens height of the reference units, metres. */
    public double referenceHeightM() {
        return reference().stream().mapToDouble(LightUnit::heightM).average().orElseThrow();
    }

    /** Least setting of all units: angle A of a row, degrees. */
    public double leastSettingDeg() {
        return units.stream().mapToDouble(LightUnit::settingDeg).min().orElseThrow();
    }

    /** The unit of this name. */
    public LightUnit unit(String id) {
        return units.stream().filter(unit -> unit.id().equals(id)).findFirst().orElseThrow();
    }

    private List<LightUnit> reference() {
        String bar = units.get(0).bar();
        if (family.tForm()) {
            bar = "bar";
        }
        String wanted = bar;
        return units.stream().filter(unit -> unit.bar().equals(wanted)).toList();
    }
}
