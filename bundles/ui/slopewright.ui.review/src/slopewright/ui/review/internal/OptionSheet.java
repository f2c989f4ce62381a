package slopewright.ui.review.internal;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import slopewright.checks.compare.Criterion;
import slopewright.exchange.sheet.Sheet;
import slopewright.exchange.sheet.SheetCell;
import slopewright.exchange.sheet.SheetFile;
import slopewright.model.io.AtomicFile;
import slopewright.ui.MessageTexts;

/** A comparison as a table in a file, with the weights that its scores rest on. */
public final class OptionSheet {

    private OptionSheet() {
    }

    /**
     * Writes what is compared.
     *
     * @param options the options in their order
     * @param weights how much each criterion counts
     * @param file    a file whose name ends in {@code .csv} or {@code .xlsx}
     * @return what there is to say about it
     */
    public static String write(List<ComparedOption> options, Map<Criterion, Integer> weights, Path file) {
        List<String> columns = new ArrayList<>(Stream.of(OptionColumn.values()).map(OptionColumn::title).toList());
        String weighed = String.join(", ", Stream.of(Criterion.values())
                .map(criterion -> label(criterion) + " " + weights.getOrDefault(criterion, 0)).toList());
        columns.add(2, Messages.get("comparison.score") + " (" + weighed + ")");
        columns.add(Messages.get("comparison.column.against-place"));
        List<List<SheetCell>> rows = new ArrayList<>();
        for (ComparedOption option : options) {
            List<SheetCell> row = new ArrayList<>();
            Stream.of(OptionColumn.values()).forEach(column -> row.add(SheetCell.text(column.text(option))));
            row.add(2, SheetCell.text(score(option, options, weights)));
            row.add(SheetCell.text(option.place().rules()));
            rows.add(row);
        }
        Sheet sheet = new Sheet(Messages.get("comparison.table"), columns, rows, Stream.concat(options.stream().map(ComparedOption::place)
                .filter(place -> !place.against().isEmpty()).map(place -> place.name() + ": " + place.against()).distinct(),
                Stream.of(Messages.get("comparison.weighed", weighed), Messages.get("comparison.order.note"),
                        Messages.get("comparison.rules.note"))).toList());
        try {
            AtomicFile.replace(file, String.valueOf(file.getFileName()).endsWith(".xlsx") ? SheetFile.xlsx(sheet) : SheetFile.csv(sheet));
            return Messages.get("comparison.exported", options.size(), file.getFileName());
        } catch (IOException e) {
            return file.getFileName() + ": " + MessageTexts.reason(e);
        }
    }

    /** Returns the score of an option, or why it has none. */
    public static String score(ComparedOption option, List<ComparedOption> all, Map<Criterion, Integer> weights) {
        return points(option, all, weights).map(found -> String.valueOf(Math.round(found))).orElse("");
    }

    /** Returns what an option comes to among others, 0 to 100; empty where it has no score. */
    static Optional<Double> points(ComparedOption option, List<ComparedOption> all, Map<Criterion, Integer> weights) {
        return Criterion.score(option.weighed(), all.stream().map(ComparedOption::weighed).toList(), weights);
    }

    /** Returns the name of a criterion for people. */
    static String label(Criterion criterion) {
        return Messages.get("comparison.criterion." + criterion.name().toLowerCase(Locale.ROOT));
    }
}
