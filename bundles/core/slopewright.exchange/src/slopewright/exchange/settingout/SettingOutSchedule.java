package slopewright.exchange.settingout;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.Attempt;
import slopewright.evaluation.GroundUsed;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.exchange.sheet.Sheet;
import slopewright.exchange.sheet.SheetCell;
import slopewright.exchange.sheet.SheetWords;
import slopewright.geometry.Angles;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.MessageRenderer;
import slopewright.messages.Words;
import slopewright.model.Aerodrome;
import slopewright.model.LightUnit;
import slopewright.model.RunwayEnd;
import slopewright.siting.ElementNames;
import slopewright.siting.magnetic.SiteVariation;
import slopewright.siting.site.CoordinateBasis;
import slopewright.standards.CitedValue;

/**
 * Every light unit with what a field party needs to set it out and to check it with level and staff.
 *
 * @param units the units, in the order of the project
 * @param notes what a reader must know
 */
public record SettingOutSchedule(List<SettingOutUnit> units, List<Message> notes) {

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
        List<Message> notes = new ArrayList<>(List.of(Message.of("sheet.setting-out.confirm"), Message.of("sheet.setting-out.chainages"),
                Message.of("sheet.setting-out.staff"), Message.of("sheet.setting-out.datum", datum(evaluation.project().getAerodrome()))));
        Optional.ofNullable(evaluation.project().getAerodrome()).map(CoordinateBasis::of).ifPresent(basis -> notes.add(Message.of(
                "sheet.setting-out.coordinates", basis.words())));
        for (AidEvaluation aid : evaluation.aids()) {
            Argument host = ElementNames.of(aid.host());
            Attempt<SiteVariation> variation = Attempt.of(() -> SiteVariation.of(aid.host(), day));
            aid.frame().reason().ifPresent(reason -> notes.add(Message.of("sheet.setting-out.no-place", host, reason)));
            notes.add(Message.of("sheet.setting-out.ground", host, GroundUsed.of(aid)));
            for (LightUnit unit : aid.aid().getUnits()) {
                units.add(SettingOutUnit.of(aid, unit, variation.value()));
            }
            notes.add(variation.value().map(found -> words(host, found))
                    .orElseGet(() -> Message.of("sheet.setting-out.no-variation", host)));
        }
        return new SettingOutSchedule(units, notes.stream().distinct().toList());
    }

    private static Message words(Argument host, SiteVariation variation) {
        return Message.of(variation.variationDeg() < 0 ? "sheet.setting-out.variation-west" : "sheet.setting-out.variation-east", host,
                Words.degrees(Math.abs(variation.variationDeg())), variation.source(), Words.name(variation.date().toString()));
    }

    private static Argument datum(Aerodrome aerodrome) {
        return aerodrome == null || aerodrome.getVerticalDatum() == null ? Words.term("report.not-known")
                : Words.name(aerodrome.getVerticalDatum());
    }

    /** Returns the schedule as a table in a language. */
    public Sheet sheet(MessageRenderer renderer) {
        SheetWords words = new SheetWords(renderer);
        List<String> columns = new ArrayList<>(words.columns("host", "indicator", "unit", "chainage", "offset", "lens-elevation",
                "lens-above-ground", "latitude", "longitude", "east", "north", "azimuth-true", "azimuth-magnetic", "azimuth-grid",
                "setting", "setting-deg", "gradient", "tolerance", "tolerance-source", "ground-elevation", "chainage-extremity").toList());
        STAFF_M.forEach(metres -> Stream.of("sheet.column.staff-level", "sheet.column.above-lens")
                .forEach(key -> columns.add(words.text(Message.of(key, Words.count(metres))))));
        words.columns("frangible", "magnetic-variation").forEach(columns::add);
        return new Sheet(words.text(Message.of("sheet.setting-out.title")), columns, units.stream().map(unit -> row(words, unit)).toList(),
                words.texts(notes), words);
    }

    /** Returns how far a unit may be from its setting, minutes of arc; empty where the rule set of the aid says nothing. */
    private static Optional<CitedValue> tolerance(AidEvaluation aid) {
        return aid.family().flatMap(family -> aid.rules().find(family.ruleKey() + ".setting-accuracy-min"));
    }

    private static String source(SheetWords words, CitedValue value) {
        return words.word(value.citation().text()) + " ["
                + words.word(Words.term("provenance." + value.citation().provenance().key())) + "]";
    }

    private static List<SheetCell> row(SheetWords words, SettingOutUnit line) {
        LightUnit unit = line.unit();
        AidEvaluation aid = line.aid();
        Optional<CitedValue> tolerance = tolerance(aid);
        String noGrid = words.text(Message.of("sheet.no-grid"));
        List<SheetCell> row = new ArrayList<>(List.of(SheetCell.text(words.word(ElementNames.of(aid.host()))),
                SheetCell.text(words.word(ElementNames.of(aid.aid()))), SheetCell.text(unit.getLabel()), words.number(unit.getAlongM(), 3),
                words.number(unit.getRightM(), 3), words.number(unit.getLensElevationM(), 3),
                words.number(unit.getHeightAboveGroundM(), 3), words.number(line.place().getLatitudeDeg(), 9),
                words.number(line.place().getLongitudeDeg(), 9), SheetCell.number(line.place().getEastM(), 3, noGrid),
                SheetCell.number(line.place().getNorthM(), 3, noGrid), words.number(line.azimuthTrueDeg(), 3),
                words.number(line.azimuthMagneticDeg(), 3), SheetCell.number(line.azimuthGridDeg(), 3, noGrid),
                SheetCell.text(unit.getSettingDeg() == null ? words.notKnown() : Angles.format(unit.getSettingDeg())),
                words.number(unit.getSettingDeg(), 5), words.number(line.gradientMmPerM(), 2),
                words.number(tolerance.map(CitedValue::value).orElse(null), 2),
                SheetCell.text(tolerance.map(value -> source(words, value)).orElse("")), words.number(line.groundElevationM(), 3),
                SheetCell.number(line.extremityAlongM(), 3, aid.host() instanceof RunwayEnd ? words.notKnown() : words.notApplicable())));
        for (int metres : STAFF_M) {
            row.add(words.number(line.levelM(metres), 3));
            row.add(words.number(line.riseM(metres), 3));
        }
        row.add(words.yes(unit.getFrangible()));
        row.add(SheetCell.text(line.variation().map(found -> words.text(words(ElementNames.of(aid.host()), found)))
                .orElse(words.notKnown())));
        return row;
    }
}
