package slopewright.report.internal.chapters;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import slopewright.evaluation.AidEvaluation;
import slopewright.geometry.FramePoint;
import slopewright.messages.Words;
import slopewright.model.Aerodrome;
import slopewright.model.Place;
import slopewright.model.Project;
import slopewright.model.RunwayEnd;
import slopewright.model.SlopewrightFactory;
import slopewright.report.internal.html.Coordinates;
import slopewright.report.internal.html.Html;
import slopewright.report.internal.html.ReportWords;
import slopewright.siting.Siting;
import slopewright.siting.UnitPlan;
import slopewright.siting.site.CoordinateBasis;
import slopewright.siting.site.SiteFrame;

/**
 * The units of an aid: where each stands, as coordinates and in the local frame, at which level, and to what it is set; with the origin
 * and the place from which the distance counts.
 */
final class UnitSection {

    private static final int DECIMALS = 3;
    private static final int DEGREE_DECIMALS = 4;

    private final Html html;
    private final ReportWords words;
    private final Project project;
    private final AidEvaluation aid;

    UnitSection(Html html, Project project, AidEvaluation aid) {
        this.html = html;
        this.project = project;
        this.aid = aid;
        words = html.words();
    }

    void write(Siting siting) {
        Optional<SiteFrame> frame = aid.frame().value();
        boolean runway = aid.host() instanceof RunwayEnd;
        boolean grid = frame.isPresent() && grid(frame.get(), siting.reference()).getEastM() != null;
        boolean geodetic = frame.flatMap(found -> found.latLon(siting.reference())).isPresent();
        List<String> heads = new ArrayList<>(List.of("unit"));
        if (geodetic) {
            heads.addAll(grid ? List.of("latitude-longitude") : List.of("latitude", "longitude"));
        }
        if (grid) {
            heads.addAll(List.of("east-m", "north-m"));
        }
        heads.addAll(List.of("along-m", "right-m", "lens-above-m", "lens-elevation-m", "setting", "setting-degrees"));
        html.section("units").table("numbers", widths(heads), heads.toArray(String[]::new));
        row(frame, words.term(runway ? "threshold" : "hover-point"), new FramePoint(0, 0, 0), geodetic, grid, Optional.empty());
        row(frame, words.term("reference"), siting.reference(), geodetic, grid, Optional.empty());
        for (UnitPlan unit : siting.units()) {
            String name = siting.units().stream().anyMatch(other -> other.bar() > 1) ? words.say("unit-of-bar", Words.name(unit.id()),
                    Words.count(unit.bar())) : unit.id();
            row(frame, name, unit.place(), geodetic, grid, Optional.of(unit.settingDeg()));
        }
        html.endTable();
        Aerodrome aerodrome = project.getAerodrome();
        List<String> remarks = new ArrayList<>(List.of(words.say(runway ? "unit-places-runway" : "unit-places-helipad"),
                words.say("coordinates-datum", CoordinateBasis.of(aerodrome).words(),
                        Words.name(words.orUnknown(aerodrome.getVerticalDatum())),
                        Words.name(words.orUnknown(aid.aid().getLevelAccuracyM(), "m")))));
        if (siting.units().size() > 1) {
            double lowest = siting.units().stream().mapToDouble(unit -> unit.place().heightM()).min().orElseThrow();
            double highest = siting.units().stream().mapToDouble(unit -> unit.place().heightM()).max().orElseThrow();
            remarks.add(words.say("level-difference", Words.mm(highest - lowest)));
        }
        html.element("p class=\"small\"", String.join(" ", remarks));
    }

    /** Degrees wider than metres; the first column takes what is left. Beside a grid both degrees stand in one column. */
    private static List<Integer> widths(List<String> heads) {
        boolean both = heads.contains("latitude-longitude");
        List<Integer> widths = new ArrayList<>(heads.stream().map(head -> switch (head) {
            case "latitude-longitude" -> 14;
            case "latitude", "longitude" -> 15;
            case "east-m", "north-m" -> 11;
            case "lens-above-m" -> 8;
            default -> both ? 9 : 10;
        }).toList());
        widths.set(0, 100 - widths.stream().skip(1).mapToInt(Integer::intValue).sum());
        return widths;
    }

    private static Place grid(SiteFrame frame, FramePoint point) {
        Place place = SlopewrightFactory.eINSTANCE.createPlace();
        frame.fromFrame(point, place);
        return place;
    }

    private void row(Optional<SiteFrame> frame, String name, FramePoint point, boolean geodetic, boolean grid,
            Optional<Double> settingDeg) {
        List<String> cells = new ArrayList<>(List.of(name));
        if (geodetic) {
            SiteFrame.LatLon place = frame.orElseThrow().latLon(point).orElseThrow();
            String latitude = Coordinates.latitude(words, place.latitudeDeg());
            String longitude = Coordinates.longitude(words, place.longitudeDeg());
            cells.addAll(grid ? List.of(latitude + " " + longitude) : List.of(latitude, longitude));
        }
        if (grid) {
            Place place = grid(frame.orElseThrow(), point);
            cells.addAll(List.of(words.fixed(place.getEastM(), DECIMALS), words.fixed(place.getNorthM(), DECIMALS)));
        }
        cells.addAll(List.of(words.fixed(point.alongM(), DECIMALS), words.fixed(point.rightM(), DECIMALS),
                words.two(point.heightM()), frame.map(found -> words.fixed(found.originElevationM() + point.heightM(), DECIMALS))
                        .orElse(words.term("not-known")),
                settingDeg.map(words::minutes).orElse(""), settingDeg.map(angle -> words.fixed(angle, DEGREE_DECIMALS)).orElse("")));
        html.row(cells);
    }
}
