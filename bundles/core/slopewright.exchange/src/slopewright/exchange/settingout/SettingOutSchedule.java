package slopewright.exchange.settingout;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.Attempt;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.exchange.sheet.Sheet;
import slopewright.exchange.sheet.SheetCell;
import slopewright.geometry.Angles;
import slopewright.messages.MessageRenderer;
import slopewright.messages.Words;
import slopewright.model.Aerodrome;
import slopewright.model.LightUnit;
import slopewright.model.RunwayEnd;
import slopewright.model.util.Projects;
import slopewright.siting.magnetic.SiteVariation;
import slopewright.standards.CitedValue;

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

    /**
     * Makes the schedule of a project.
     *
     * @param evaluation the project with what its aids give
     * @param day        the day for the magnetic variation
     * @return the schedule
     */
    public static SettingOutSchedule of(ProjectEvaluation evaluation, LocalDate day) {
        List<SettingOutUnit> units = new ArrayList<>();
        List<String> notes = new ArrayList<>(List.of(
                "A design aid: confirm every level and place on the ground before a unit is set up.",
                "Chainages run from the threshold, or the hover point, in the landing direction; offsets to the right of it are positive.",
                "The beam of a unit passes a staff before it at the lens level plus the distance times the tangent of the setting."));
        notes.add("Elevations in metres in the vertical datum: " + datum(evaluation.project().getAerodrome())
                + ". Latitude and longitude on WGS 84.");
        for (AidEvaluation aid : evaluation.aids()) {
            String host = Projects.label(aid.host());
            Attempt<SiteVariation> variation = Attempt.of(() -> SiteVariation.of(aid.host(), day));
            aid.frame().reason().ifPresent(reason -> notes.add(host + " has no place on the ground: " + reason.english() + "."));
            for (LightUnit unit : aid.aid().getUnits()) {
                units.add(SettingOutUnit.of(aid, unit, variation.value()));
            }
            notes.add(host + variation.value().map(SettingOutSchedule::words).orElse(": the magnetic variation is not known."));
        }
        return new SettingOutSchedule(units, notes.stream().distinct().toList());
    }

    private static String words(SiteVariation variation) {
        return String.format(Locale.ROOT, ": magnetic variation %+.2f° (%s, %s).", variation.variationDeg(), variation.source(),
                variation.date());
    }

    private static String datum(Aerodrome aerodrome) {
        return aerodrome == null || aerodrome.getVerticalDatum() == null ? SheetCell.NOT_KNOWN : aerodrome.getVerticalDatum();
    }

    /** Returns the schedule as a table. */
    public Sheet sheet() {
        List<String> columns = new ArrayList<>(List.of("runway end or approach", "indicator", "unit", "chainage from threshold m",
                "offset m", "lens elevation m", "lens above ground m", "latitude deg", "longitude deg", "east m", "north m",
                "azimuth true deg", "azimuth magnetic deg", "azimuth grid deg", "setting", "setting deg", "gradient mm per m",
                "setting tolerance min", "tolerance source", "ground elevation m", "chainage from runway extremity m"));
        STAFF_M.forEach(metres -> columns.addAll(List.of("staff level at " + metres + " m", "above lens at " + metres + " m")));
        columns.add("frangible");
        return new Sheet("Setting out", columns, units.stream().map(SettingOutSchedule::row).toList(), notes);
    }

    /** Returns how far a unit may be from its setting, minutes of arc; empty where the rule set of the aid says nothing. */
    private static Optional<CitedValue> tolerance(AidEvaluation aid) {
        return aid.family().flatMap(family -> aid.rules().find(family.ruleKey() + ".setting-accuracy-min"));
    }

    private static String source(CitedValue value) {
        MessageRenderer english = MessageRenderer.of(Locale.ENGLISH);
        return english.write(value.citation().text()) + " [" + english.write(Words.term("provenance."
                + value.citation().provenance().key())) + "]";
    }

    private static List<SheetCell> row(SettingOutUnit line) {
        LightUnit unit = line.unit();
        AidEvaluation aid = line.aid();
        Optional<CitedValue> tolerance = tolerance(aid);
        List<SheetCell> row = new ArrayList<>(List.of(SheetCell.text(Projects.label(aid.host())),
                SheetCell.text(Projects.label(aid.aid())), SheetCell.text(unit.getLabel()), SheetCell.number(unit.getAlongM(), 3),
                SheetCell.number(unit.getRightM(), 3), SheetCell.number(unit.getLensElevationM(), 3),
                SheetCell.number(unit.getHeightAboveGroundM(), 3), SheetCell.number(line.place().getLatitudeDeg(), 9),
                SheetCell.number(line.place().getLongitudeDeg(), 9), SheetCell.number(line.place().getEastM(), 3, "no grid"),
                SheetCell.number(line.place().getNorthM(), 3, "no grid"), SheetCell.number(line.azimuthTrueDeg(), 3),
                SheetCell.number(line.azimuthMagneticDeg(), 3), SheetCell.number(line.azimuthGridDeg(), 3, "no grid"),
                SheetCell.text(unit.getSettingDeg() == null ? SheetCell.NOT_KNOWN : Angles.format(unit.getSettingDeg())),
                SheetCell.number(unit.getSettingDeg(), 5), SheetCell.number(line.gradientMmPerM(), 2),
                SheetCell.number(tolerance.map(CitedValue::value).orElse(null), 2),
                SheetCell.text(tolerance.map(SettingOutSchedule::source).orElse("")), SheetCell.number(line.groundElevationM(), 3),
                SheetCell.number(line.extremityAlongM(), 3, aid.host() instanceof RunwayEnd ? SheetCell.NOT_KNOWN : "not applicable")));
        for (int metres : STAFF_M) {
            row.add(SheetCell.number(line.levelM(metres), 3));
            row.add(SheetCell.number(line.riseM(metres), 3));
        }
        row.add(SheetCell.text(unit.getFrangible() == null ? SheetCell.NOT_KNOWN : unit.getFrangible() ? "yes" : "no"));
        return row;
    }
}
