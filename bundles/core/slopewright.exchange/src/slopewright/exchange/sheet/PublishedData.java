package slopewright.exchange.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import slopewright.exchange.LaidAid;
import slopewright.geometry.Angles;
import slopewright.geometry.FramePoint;
import slopewright.geometry.Lengths;
import slopewright.model.RunwayEnd;
import slopewright.model.util.Projects;
import slopewright.siting.Siting;
import slopewright.siting.SitingException;
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
     * @param laid        the aid
     * @param atRunway    whether it serves a runway; a helipad has no threshold
     * @param angleDeg    the nominal angle of the slope, decimal degrees
     * @param eyeHeightM  eye height over the threshold, or at the hover point, on the lowest on-slope signal, metres; over a threshold
     *                    it is the MEHT
     * @param onAngleDeg  the angle that the eye height holds for, decimal degrees
     * @param distanceM   distance of the row or bar from the threshold or hover point, metres
     * @param displacedM  by how much the threshold is displaced, metres
     * @param place       where its units stand, in the middle; empty where that is not known
     * @param axisTurnDeg turn of the axis from the approach direction, decimal degrees, clockwise
     */
    public record PublishedAid(LaidAid laid, boolean atRunway, Double angleDeg, Double eyeHeightM, Double onAngleDeg, Double distanceM,
            Double displacedM, Optional<SiteFrame.LatLon> place, double axisTurnDeg) {

        /** Returns the minimum eye height over the threshold, metres; null where it is not known or there is no threshold. */
        public Double mehtM() {
            return atRunway ? eyeHeightM : null;
        }
    }

    /** Copies the list. */
    public PublishedData {
        aids = List.copyOf(aids);
    }

    /** Makes the data of some aids. */
    public static PublishedData of(List<LaidAid> aids) {
        return new PublishedData(aids.stream().map(PublishedData::aid).toList());
    }

    private static PublishedAid aid(LaidAid laid) {
        Optional<Siting> siting = laid.siting();
        Double displaced = laid.host() instanceof RunwayEnd end ? end.getDisplacedThresholdM() : null;
        return new PublishedAid(laid, laid.host() instanceof RunwayEnd, siting.map(Siting::slopeDeg).orElse(laid.aid().getSlopeDeg()),
                siting.map(Siting::mehtM).orElse(null), siting.map(Siting::lowestOnSlopeDeg).orElse(null),
                siting.map(Siting::distanceM).orElse(null), displaced, siting.flatMap(found -> place(laid, found)),
                laid.aid().getAxisTurnDeg() == null ? 0 : laid.aid().getAxisTurnDeg());
    }

    private static Optional<SiteFrame.LatLon> place(LaidAid laid, Siting siting) {
        try {
            double along = siting.units().stream().mapToDouble(unit -> unit.place().alongM()).average().orElse(0);
            double right = siting.units().stream().mapToDouble(unit -> unit.place().rightM()).average().orElse(0);
            return SiteFrame.of(laid.host()).latLon(new FramePoint(along, right, 0));
        } catch (SitingException e) {
            return Optional.empty();
        }
    }

    /** Returns the data as a table. */
    public Sheet sheet() {
        List<String> notes = new ArrayList<>(List.of(
                "MEHT: the minimum eye height over the threshold, that on the lowest on-slope signal.",
                "The place is the middle of the units, latitude and longitude on WGS 84.",
                "A design aid: what is published rests on the flight inspection and the authority's approval."));
        aids.stream().filter(one -> one.laid.siting().isEmpty()).forEach(one -> notes.add(Projects.label(one.laid.aid()) + ": "
                + one.laid.reason()));
        return new Sheet("Data to publish", List.of("runway or approach", "indicator", "type", "side", "angle deg", "angle", "MEHT m",
                "MEHT ft", "eye height m", "eye height on angle deg", "distance from threshold or hover point m",
                "displacement of threshold m", "latitude deg", "longitude deg", "displacement of axis deg", "rule set"),
                aids.stream().map(PublishedData::row).toList(), notes);
    }

    private static List<SheetCell> row(PublishedAid one) {
        String none = one.atRunway ? SheetCell.NOT_KNOWN : NOT_APPLICABLE;
        Double feet = one.mehtM() == null ? null : Double.valueOf(Lengths.metresToFeet(one.mehtM()));
        return List.of(SheetCell.text(Projects.label(one.laid.host())), SheetCell.text(Projects.label(one.laid.aid())),
                SheetCell.text(one.laid.familyName()), SheetCell.text(one.laid.aid().getSide().getName().toLowerCase(Locale.ROOT)),
                SheetCell.number(one.angleDeg, 3), SheetCell.text(one.angleDeg == null ? SheetCell.NOT_KNOWN : Angles.format(one.angleDeg)),
                SheetCell.number(one.mehtM(), 2, none), SheetCell.number(feet, 1, none), SheetCell.number(one.eyeHeightM, 2),
                SheetCell.number(one.onAngleDeg, 3), SheetCell.number(one.distanceM, 2), SheetCell.number(one.displacedM, 1, none),
                SheetCell.number(one.place.map(SiteFrame.LatLon::latitudeDeg).orElse(null), 7),
                SheetCell.number(one.place.map(SiteFrame.LatLon::longitudeDeg).orElse(null), 7), SheetCell.number(one.axisTurnDeg, 2),
                SheetCell.text(one.laid.ruleSetName()));
    }
}
