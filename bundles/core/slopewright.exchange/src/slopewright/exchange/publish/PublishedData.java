package slopewright.exchange.publish;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.exchange.sheet.Sheet;
import slopewright.exchange.sheet.SheetCell;
import slopewright.geometry.Angles;
import slopewright.geometry.FramePoint;
import slopewright.geometry.Lengths;
import slopewright.messages.Message;
import slopewright.model.RunwayEnd;
import slopewright.model.util.Projects;
import slopewright.siting.IndicatorFamily;
import slopewright.siting.OnSlopeBound;
import slopewright.siting.Siting;
import slopewright.siting.site.SiteFrame;

/**
 * The data of each aid that are published for an aerodrome.
 *
 * @param aids the aids, in the order of the project
 */
public record PublishedData(List<PublishedAid> aids) {

    private static final String NOT_APPLICABLE = "not applicable";

    /**
     * What is published of one aid. Null where a number is not known.
     *
     * @param aid                the aid
     * @param angleDeg           the nominal angle of the slope, decimal degrees
     * @param mehtM              minimum eye height over the threshold (MEHT), metres; null at a helipad, which has no threshold
     * @param hoverEyeHeightM    minimum eye height over the hover point of a helipad, metres; null at a runway
     * @param nominalEyeHeightM  eye height there on the slope itself, metres, where the family or place has one beside the minimum
     * @param onAngleDeg         the angle that the minimum eye height holds for, decimal degrees
     * @param distanceM          distance of the row or bar from the threshold or hover point, metres
     * @param displacedM         by how much the threshold is displaced, metres
     * @param place              where its units stand, in the middle; empty where that is not known
     * @param axisTurnDeg        turn of the axis from the approach direction, decimal degrees, clockwise
     */
    public record PublishedAid(AidEvaluation aid, Double angleDeg, Double mehtM, Double hoverEyeHeightM, Double nominalEyeHeightM,
            Double onAngleDeg, Double distanceM, Double displacedM, Optional<SiteFrame.LatLon> place, double axisTurnDeg) {

        /** Returns whether it serves a runway; a helipad has no threshold. */
        public boolean isAtRunway() {
            return aid.host() instanceof RunwayEnd;
        }

        /** Returns it in the words of an aeronautical information publication: what is not known says so and is never left out. */
        public String wording() {
            String type = aid.family().map(IndicatorFamily::name).orElse("unknown");
            List<String> parts = new ArrayList<>(List.of(type, aid.aid().getSide().getName().toLowerCase(Locale.ROOT), angleDeg == null
                    ? "angle not known" : String.format(Locale.ROOT, "%.2f°", angleDeg)));
            if (isAtRunway()) {
                parts.add(mehtM == null ? "MEHT not known" : String.format(Locale.ROOT, "MEHT %.2f m (%.0f ft)", mehtM,
                        Lengths.metresToFeet(mehtM)));
            }
            if (displacedM != null && displacedM > 0) {
                parts.add(String.format(Locale.ROOT, "threshold displaced %.0f m", displacedM));
            }
            if (axisTurnDeg != 0) {
                parts.add(String.format(Locale.ROOT, "axis turned %.2f° %s", Math.abs(axisTurnDeg), axisTurnDeg > 0 ? "clockwise"
                        : "counter-clockwise"));
            }
            return String.join(", ", parts);
        }
    }

    /** Copies the list. */
    public PublishedData {
        aids = List.copyOf(aids);
    }

    /** Makes the data of a project. */
    public static PublishedData of(ProjectEvaluation evaluation) {
        return new PublishedData(evaluation.aids().stream().map(PublishedData::aid).toList());
    }

    private static PublishedAid aid(AidEvaluation aid) {
        Optional<Siting> siting = aid.siting().value();
        boolean atRunway = aid.host() instanceof RunwayEnd;
        Optional<OnSlopeBound> published = aid.published().map(AidEvaluation.PublishedHeight::bound);
        Double eyeHeight = published.map(OnSlopeBound::heightM).or(() -> siting.map(Siting::mehtM)).orElse(null);
        Double nominal = siting.isPresent() && siting.get().nominalEyeHeightM().isPresent()
                ? Double.valueOf(siting.get().nominalEyeHeightM().getAsDouble()) : null;
        Double displaced = aid.host() instanceof RunwayEnd end ? end.getDisplacedThresholdM() : null;
        return new PublishedAid(aid, siting.map(Siting::slopeDeg).orElse(aid.aid().getSlopeDeg()), atRunway ? eyeHeight : null,
                atRunway ? null : eyeHeight, nominal, published.map(OnSlopeBound::angleDeg).or(() -> siting.map(
                        Siting::lowestOnSlopeDeg)).orElse(null),
                siting.map(Siting::distanceM).orElse(null), displaced, siting.flatMap(found -> place(aid, found)),
                aid.aid().getAxisTurnDeg() == null ? 0 : aid.aid().getAxisTurnDeg());
    }

    private static Optional<SiteFrame.LatLon> place(AidEvaluation aid, Siting siting) {
        double along = siting.units().stream().mapToDouble(unit -> unit.place().alongM()).average().orElse(0);
        double right = siting.units().stream().mapToDouble(unit -> unit.place().rightM()).average().orElse(0);
        return aid.frame().value().flatMap(frame -> frame.latLon(new FramePoint(along, right, 0)));
    }

    /** Returns the data as a table. */
    public Sheet sheet() {
        List<String> notes = new ArrayList<>(List.of(
                "MEHT: the minimum eye height over the threshold at which the indicator still reads on slope, by the unit that bounds it.",
                "The nominal eye height is that on the slope itself, for families that have one.",
                "The place is the middle of the units, latitude and longitude on WGS 84.",
                "A design aid: what is published rests on the flight inspection and the authority's approval."));
        aids.stream().flatMap(line -> line.aid.published().stream()).map(AidEvaluation.PublishedHeight::taken)
                .map(taken -> "For the MEHT, " + plain(taken.printed()) + " " + taken.printedUnit()
                        + " are taken off the setting that bounds it: " + taken.citation().text() + ".").distinct().forEach(notes::add);
        aids.forEach(line -> line.aid.siting().reason().map(Message::english)
                .ifPresent(reason -> notes.add(Projects.label(line.aid.aid()) + ": " + reason)));
        return new Sheet("Data to publish", List.of("runway or approach", "indicator", "type", "side", "angle deg", "angle", "MEHT m",
                "MEHT ft", "nominal eye height m", "eye height over hover point m", "eye height holds for deg",
                "distance from threshold or hover point m", "displacement of threshold m", "latitude deg", "longitude deg",
                "displacement of axis deg", "rule set", "latitude as published", "longitude as published", "wording for the AIP"),
                aids.stream().map(PublishedData::row).toList(), notes);
    }

    private static String plain(double number) {
        return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
    }

    private static List<SheetCell> row(PublishedAid line) {
        AidEvaluation aid = line.aid;
        String atRunway = line.isAtRunway() ? SheetCell.NOT_KNOWN : NOT_APPLICABLE;
        String atHelipad = line.isAtRunway() ? NOT_APPLICABLE : SheetCell.NOT_KNOWN;
        String ifNominal = aid.siting().value().isPresent() ? NOT_APPLICABLE : SheetCell.NOT_KNOWN;
        Double feet = line.mehtM == null ? null : Double.valueOf(Lengths.metresToFeet(line.mehtM));
        return List.of(SheetCell.text(Projects.label(aid.host())), SheetCell.text(Projects.label(aid.aid())),
                SheetCell.text(aid.family().map(IndicatorFamily::name).orElse("unknown")),
                SheetCell.text(aid.aid().getSide().getName().toLowerCase(Locale.ROOT)), SheetCell.number(line.angleDeg, 3),
                SheetCell.text(line.angleDeg == null ? SheetCell.NOT_KNOWN : Angles.format(line.angleDeg)),
                SheetCell.number(line.mehtM, 2, atRunway), SheetCell.number(feet, 1, atRunway),
                SheetCell.number(line.nominalEyeHeightM, 2, ifNominal), SheetCell.number(line.hoverEyeHeightM, 2, atHelipad),
                SheetCell.number(line.onAngleDeg, 3), SheetCell.number(line.distanceM, 2), SheetCell.number(line.displacedM, 1, atRunway),
                SheetCell.number(line.place.map(SiteFrame.LatLon::latitudeDeg).orElse(null), 7),
                SheetCell.number(line.place.map(SiteFrame.LatLon::longitudeDeg).orElse(null), 7), SheetCell.number(line.axisTurnDeg, 2),
                SheetCell.text(aid.rules().descriptor().title().english()),
                SheetCell.text(line.place.map(place -> published(place.latitudeDeg(), 2, 'N', 'S')).orElse(SheetCell.NOT_KNOWN)),
                SheetCell.text(line.place.map(place -> published(place.longitudeDeg(), 3, 'E', 'W')).orElse(SheetCell.NOT_KNOWN)),
                SheetCell.text(line.wording()));
    }

    /** Writes degrees, minutes and hundredths of seconds without signs between them, rounded once: {@code 471759.63N}. */
    private static String published(double degrees, int digits, char positive, char negative) {
        long hundredths = Math.round(Math.abs(degrees) * 360_000);
        return String.format(Locale.ROOT, "%0" + digits + "d%02d%05.2f%c", hundredths / 360_000, hundredths / 6000 % 60, hundredths % 6000
                / 100.0, degrees < 0 ? negative : positive);
    }
}
