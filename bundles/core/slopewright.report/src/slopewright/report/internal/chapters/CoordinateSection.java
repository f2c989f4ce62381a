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
import slopewright.siting.site.SiteFrame;

/** Where everything of an aid stands: its units, the reference of its distance and the origin, as coordinates and in the local frame. */
final class CoordinateSection {

    private static final int DECIMALS = 3;

    private final Html html;
    private final ReportWords words;
    private final Project project;
    private final AidEvaluation aid;

    CoordinateSection(Html html, Project project, AidEvaluation aid) {
        this.html = html;
        this.project = project;
        this.aid = aid;
        words = html.words();
    }

    void write(Siting siting) {
        Optional<SiteFrame> frame = aid.frame().value();
        if (frame.isEmpty()) {
            return;
        }
        boolean grid = grid(frame.get(), siting.reference()).getEastM() != null;
        boolean geodetic = frame.get().latLon(siting.reference()).isPresent();
        List<String> heads = new ArrayList<>(List.of("point"));
        if (geodetic) {
            heads.addAll(List.of("latitude", "longitude"));
        }
        if (grid) {
            heads.addAll(List.of("east-m", "north-m"));
        }
        heads.addAll(List.of("along-m", "right-m", "elevation-m"));
        html.section("coordinates").table("numbers", widths(heads), heads.toArray(String[]::new));
        String origin = words.term(aid.host() instanceof RunwayEnd ? "threshold" : "hover-point");
        row(frame.get(), origin, new FramePoint(0, 0, 0), geodetic, grid);
        row(frame.get(), words.term("reference"), siting.reference(), geodetic, grid);
        for (UnitPlan unit : siting.units()) {
            row(frame.get(), unit.id(), unit.place(), geodetic, grid);
        }
        Aerodrome aerodrome = project.getAerodrome();
        html.endTable().remark("coordinates-datum", Words.name(words.orUnknown(aerodrome.getCoordinateReference())),
                Words.name(words.orUnknown(aerodrome.getVerticalDatum())));
    }

    /** The first column a seventh, degrees wider than metres. */
    private static List<Integer> widths(List<String> heads) {
        int narrow = heads.size() - 1 - (heads.contains("latitude") ? 2 : 0);
        int wide = heads.contains("latitude") ? 20 : 0;
        int rest = (100 - 14 - 2 * wide) / narrow;
        return heads.stream().map(head -> switch (head) {
            case "point" -> 14;
            case "latitude", "longitude" -> wide;
            default -> rest;
        }).toList();
    }

    private static Place grid(SiteFrame frame, FramePoint point) {
        Place place = SlopewrightFactory.eINSTANCE.createPlace();
        frame.fromFrame(point, place);
        return place;
    }

    private void row(SiteFrame frame, String name, FramePoint point, boolean geodetic, boolean grid) {
        List<String> cells = new ArrayList<>(List.of(name));
        if (geodetic) {
            SiteFrame.LatLon place = frame.latLon(point).orElseThrow();
            cells.addAll(List.of(Coordinates.latitude(words, place.latitudeDeg()), Coordinates.longitude(words, place.longitudeDeg())));
        }
        if (grid) {
            Place place = grid(frame, point);
            cells.addAll(List.of(words.fixed(place.getEastM(), DECIMALS), words.fixed(place.getNorthM(), DECIMALS)));
        }
        cells.addAll(List.of(words.fixed(point.alongM(), DECIMALS), words.fixed(point.rightM(), DECIMALS),
                words.fixed(frame.originElevationM() + point.heightM(), DECIMALS)));
        html.row(cells);
    }
}
