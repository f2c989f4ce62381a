package slopewright.report.internal.deliverables;

import java.util.List;

import slopewright.evaluation.AidEvaluation;
import slopewright.exchange.map.GeoTiffFile;
import slopewright.exchange.map.MarginRaster;
import slopewright.model.ApproachAid;
import slopewright.report.handover.Deliverable;
import slopewright.report.handover.HandoverOptions;
import slopewright.report.handover.HandoverSource;

/** The margins of everything that was compared with the obstacle surface of an aid, in cells. */
public final class MarginsDeliverable implements Deliverable {

    @Override
    public int order() {
        return 53;
    }

    @Override
    public List<Offer> about(ApproachAid aid) {
        return List.of(new Offer("margins", "tif", false, (source, options) -> GeoTiffFile.bytes(raster(source, options, aid.getId()))));
    }

    private static MarginRaster raster(HandoverSource source, HandoverOptions options, String id) {
        AidEvaluation aid = source.aid(id);
        return MarginRaster.of(aid, MarginRaster.USUAL_CELL_M, source.madeFrom(aid), options.inMetres());
    }
}
