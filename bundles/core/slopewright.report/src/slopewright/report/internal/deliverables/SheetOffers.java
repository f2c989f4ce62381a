package slopewright.report.internal.deliverables;

import java.io.IOException;
import java.util.List;
import java.util.function.BiFunction;

import slopewright.exchange.sheet.Sheet;
import slopewright.exchange.sheet.SheetFile;
import slopewright.messages.Message;
import slopewright.report.ReportException;
import slopewright.report.handover.Deliverable;
import slopewright.report.handover.HandoverOptions;
import slopewright.report.handover.HandoverSource;

/** Offers a sheet as text and as a workbook. */
final class SheetOffers {

    private SheetOffers() {
    }

    static List<Deliverable.Offer> of(String kind, boolean usual, BiFunction<HandoverSource, HandoverOptions, Sheet> sheet) {
        return List.of(new Deliverable.Offer(kind, "csv", usual, (source, options) -> SheetFile.csv(sheet.apply(source, options)
                .from(source.madeFrom()))),
                new Deliverable.Offer(kind, "xlsx", usual, (source, options) -> workbook(sheet.apply(source, options)
                        .from(source.madeFrom()))));
    }

    private static byte[] workbook(Sheet sheet) throws ReportException {
        try {
            return SheetFile.xlsx(sheet);
        } catch (IOException e) {
            throw new ReportException(Message.said("document.workbook", e), e);
        }
    }
}
