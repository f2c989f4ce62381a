package slopewright.report.internal.deliverables;

import java.util.List;

import slopewright.exchange.map.GeoJsonFile;
import slopewright.exchange.map.GeoPackageFile;
import slopewright.exchange.map.KmlFile;
import slopewright.exchange.map.MapDocument;
import slopewright.exchange.map.MapExport;
import slopewright.model.Project;
import slopewright.report.handover.Deliverable;
import slopewright.report.handover.HandoverOptions;
import slopewright.report.handover.HandoverSource;

/** Features for maps. */
public final class MapDeliverable implements Deliverable {

    @Override
    public int order() {
        return 50;
    }

    @Override
    public List<Offer> about(Project project) {
        return List.of(new Offer("map", "geojson", false, (source, options) -> GeoJsonFile.bytes(map(source, options))),
                new Offer("map", "kml", false, (source, options) -> KmlFile.bytes(map(source, options))),
                new Offer("map", "kmz", false, (source, options) -> KmlFile.packed(map(source, options))),
                new Offer("map", "gpkg", false, (source, options) -> GeoPackageFile.bytes(map(source, options))));
    }

    private static MapDocument map(HandoverSource source, HandoverOptions options) {
        return MapExport.of(source.evaluation(), source.evaluation().aids(), MapExport.USUAL_BEAM_M, options.inMetres())
                .from(source.madeFrom());
    }
}
