package slopewright.report.internal.deliverables;

import java.util.List;
import java.util.Optional;

import slopewright.exchange.settingout.PointList;
import slopewright.messages.Message;
import slopewright.model.Aerodrome;
import slopewright.model.Project;
import slopewright.model.util.Projects;
import slopewright.report.handover.Deliverable;
import slopewright.report.handover.HandoverOptions;
import slopewright.report.handover.HandoverSource;

/** The lenses as points for a total station, where the aerodrome has a grid. */
public final class PointsDeliverable implements Deliverable {

    @Override
    public int order() {
        return 25;
    }

    @Override
    public List<Offer> about(Project project) {
        boolean grid = Optional.ofNullable(project.getAerodrome()).map(Aerodrome::getCoordinateReference)
                .filter(reference -> reference.startsWith("EPSG:")).isPresent();
        return !grid || Projects.aids(project).isEmpty() ? List.of() : List.of(
                new Offer("points", "txt", false, (source, options) -> points(source, options).pnezd(options.inMetres())),
                new Offer("points-landxml", Message.of("deliverable.points-landxml"), "points", "xml", false, (source, options) ->
                        points(source, options).landXml(options.date(), options.inMetres()), Optional.empty()));
    }

    private static PointList points(HandoverSource source, HandoverOptions options) {
        return PointList.of(source.evaluation(), options.date()).from(source.madeFrom());
    }
}
