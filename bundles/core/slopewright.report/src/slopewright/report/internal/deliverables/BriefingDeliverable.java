package slopewright.report.internal.deliverables;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

import slopewright.model.ApproachAid;
import slopewright.report.FieldPapers;
import slopewright.report.handover.Deliverable;

/** The briefing for the pilot, to print, for a telephone, and to copy; it says on itself where the indicator is not for use. */
public final class BriefingDeliverable implements Deliverable {

    @Override
    public int order() {
        return 82;
    }

    @Override
    public List<Offer> about(ApproachAid aid) {
        return Stream.of(FieldPapers.Form.values()).map(form -> new Offer("briefing", form.name().toLowerCase(Locale.ROOT),
                form == FieldPapers.Form.PDF && Boolean.TRUE.equals(aid.getPortable()), (source, options) -> FieldPapers.briefing(
                        source.evaluation(), source.aid(aid.getId()).aid(), options.date(), options.report(), form).bytes()))
                .toList();
    }
}
