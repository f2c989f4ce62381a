package slopewright.report.internal.deliverables;

import java.util.List;

import slopewright.exchange.settingout.SettingOutSchedule;
import slopewright.model.Project;
import slopewright.report.handover.Deliverable;

/** The setting-out schedule. */
public final class ScheduleDeliverable implements Deliverable {

    @Override
    public int order() {
        return 20;
    }

    @Override
    public List<Offer> about(Project project) {
        return SheetOffers.of("schedule", true, (source, options) -> SettingOutSchedule.of(source.evaluation(), options.date()).sheet(
                options.inMetres()));
    }
}
