package slopewright.exchange.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import slopewright.exchange.LaidAid;
import slopewright.geometry.Angles;
import slopewright.model.Aerodrome;
import slopewright.model.LightUnit;
import slopewright.model.Project;
import slopewright.model.RunwayEnd;
import slopewright.model.util.Projects;
import slopewright.siting.SitingException;
import slopewright.siting.site.SiteFrame;

/**
 * Every light unit with what a field party needs to set it out and to check it with level and staff.
 *
 * @param units the units, in the order of the project
 * @param notes what a reader must know
 */
public record SettingOutSchedule(List<SettingOutUnit> units, List<String> notes) {

    /** Where a staff is read, metres before the unit. */
    public static final List<Integer> STAFF_M = List.of(5, 10, 20);

    /** Copies the lists. */
    public SettingOutSchedule {
        units = List.copyOf(units);
        notes = List.copyOf(notes);
    }

    /** Makes the schedule of some aids. */
    public static SettingOutSchedule of(Project project, List<LaidAid> aids) {
        List<SettingOutUnit> units = new ArrayList<>();
        List<String> notes = new ArrayList<>(List.of(
                "A design aid: confirm every level and place on the ground before a unit is set up.",
                "Chainages run from the threshold, or the hover point, in the landing direction; offsets to the right of it are positive.",
                "The beam of a unit passes a staff before it at the lens level plus the distance times the tangent of the setting."));
        notes.add("Elevations in metres in the vertical datum: " + datum(project.getAerodrome()) + ". Latitude and longitude on WGS 84.");
        for (LaidAid laid : aids) {
            Optional<SiteFrame> frame = frame(laid, notes);
            for (LightUnit unit : laid.aid().getUnits()) {
                units.add(SettingOutUnit.of(laid, unit, frame));
            }
            notes.add(laid.variationDeg().isEmpty() ? Projects.label(laid.host()) + ": the magnetic variation is not known."
                    : Projects.label(laid.host()) + String.format(Locale.ROOT, ": magnetic variation %+.2f° (%s).",
                            laid.variationDeg().getAsDouble(), laid.variationSource()));
        }
        return new SettingOutSchedule(units, notes.stream().distinct().toList());
    }

    private static String datum(Aerodrome aerodrome) {
        return aerodrome == null || aerodrome.getVerticalDatum() == null ? SheetCell.NOT_KNOWN : aerodrome.getVerticalDatum();
    }

    private static Optional<SiteFrame> frame(LaidAid laid, List<String> notes) {
        try {
            return Optional.of(SiteFrame.of(laid.host()));
        } catch (SitingException e) {
            notes.add(Projects.label(laid.host()) + " has no place on the ground: " + e.getMessage() + ".");
            return Optional.empty();
        }
    }

    /** Returns the schedule as a table. */
    public Sheet sheet() {
        List<String> columns = new ArrayList<>(List.of("runway end or approach", "indicator", "unit", "chainage from threshold m",
                "offset m",
                "lens elevation m", "lens above ground m", "latitude deg", "longitude deg", "east m", "north m", "azimuth true deg",
                "azimuth magnetic deg", "azimuth grid deg", "setting", "setting deg", "gradient mm per m", "setting tolerance min",
                "tolerance source", "ground elevation m", "chainage from runway extremity m"));
        STAFF_M.forEach(metres -> columns.addAll(List.of("staff level at " + metres + " m", "above lens at " + metres + " m")));
        columns.add("frangible");
        return new Sheet("Setting out", columns, units.stream().map(SettingOutSchedule::row).toList(), notes);
    }

    private static List<SheetCell> row(SettingOutUnit one) {
        LightUnit unit = one.unit();
        LaidAid laid = one.laid();
        Double tolerance = laid.settingToleranceMinutes().isPresent() ? Double.valueOf(laid.settingToleranceMinutes().getAsDouble()) : null;
        List<SheetCell> row = new ArrayList<>(List.of(SheetCell.text(Projects.label(laid.host())),
                SheetCell.text(Projects.label(laid.aid())),
                SheetCell.text(unit.getLabel()), SheetCell.number(unit.getAlongM(), 3), SheetCell.number(unit.getRightM(), 3),
                SheetCell.number(unit.getLensElevationM(), 3), SheetCell.number(unit.getHeightAboveGroundM(), 3),
                SheetCell.number(one.place().getLatitudeDeg(), 9), SheetCell.number(one.place().getLongitudeDeg(), 9),
                SheetCell.number(one.place().getEastM(), 3, "no grid"), SheetCell.number(one.place().getNorthM(), 3, "no grid"),
                SheetCell.number(one.azimuthTrueDeg(), 3), SheetCell.number(one.azimuthMagneticDeg(), 3),
                SheetCell.number(one.azimuthGridDeg(), 3, "no grid"),
                SheetCell.text(unit.getSettingDeg() == null ? SheetCell.NOT_KNOWN : Angles.format(unit.getSettingDeg())),
                SheetCell.number(unit.getSettingDeg(), 5), SheetCell.number(one.gradientMmPerM(), 2), SheetCell.number(tolerance, 2),
                SheetCell.text(laid.toleranceSource()), SheetCell.number(one.groundElevationM(), 3),
                SheetCell.number(one.extremityAlongM(), 3, laid.host() instanceof RunwayEnd ? SheetCell.NOT_KNOWN : "not applicable")));
        for (int metres : STAFF_M) {
            row.add(SheetCell.number(one.levelM(metres), 3));
            row.add(SheetCell.number(one.riseM(metres), 3));
        }
        row.add(SheetCell.text(unit.getFrangible() == null ? SheetCell.NOT_KNOWN : unit.getFrangible() ? "yes" : "no"));
        return row;
    }
}
