package slopewright.ui.review.internal;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;

import slopewright.checks.compare.MarginKind;
import slopewright.ui.AccessibleName;

/**
 * What is compared: the table, the chart beside it, or below it where the reasons in the table would have no room, and below both
 * what the rules have against the place, once, and the reasons that still have no room, each whole. A hand at the sash is respected.
 */
public final class OptionPane {
    private static final double MOST_TABLE = 0.7;
    private static final double MOST_REASONS = 0.3;

    private final SashForm sash;
    private final OptionTable table;
    private final MarginChart chart;
    private final Text reasons;
    private int[] given = {};
    private MarginKind kind = MarginKind.OBSTACLE;

    /**
     * Makes the pane.
     *
     * @param parent where it goes, in a grid of one column
     */
    public OptionPane(Composite parent) {
        sash = new SashForm(parent, SWT.HORIZONTAL | SWT.SMOOTH);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(sash);
        table = new OptionTable(sash, this::drawChart, this::sayReasons);
        chart = new MarginChart(sash);
        reasons = new Text(parent, SWT.MULTI | SWT.READ_ONLY | SWT.WRAP | SWT.V_SCROLL);
        AccessibleName.give(reasons, Messages.get("comparison.column.why"));
        GridDataFactory.fillDefaults().grab(true, false).exclude(true).applyTo(reasons);
        reasons.setVisible(false);
        sash.addListener(SWT.Resize, event -> share());
    }

    /** Shares the room out, unless somebody has moved the sash. */
    private void share() {
        int width = sash.getSize().x;
        int height = sash.getSize().y;
        if (width <= 0 || height <= 0) {
            return;
        }
        int right = Math.max(chart.leastWidth(), Math.min(chart.neededWidth(), width - table.neededWidth()));
        int orientation = table.leastWidth() + chart.leastWidth() <= width ? SWT.HORIZONTAL : SWT.VERTICAL;
        if (sash.getOrientation() != orientation) {
            sash.setOrientation(orientation);
            given = new int[0];
        }
        if (given.length > 0 && !Arrays.equals(given, sash.getWeights())) {
            return;
        }
        if (orientation == SWT.HORIZONTAL) {
            sash.setWeights(width - right, right);
        } else {
            int above = (int) Math.min(table.neededHeight(), MOST_TABLE * height);
            sash.setWeights(above, height - above);
        }
        given = sash.getWeights();
    }

    /** Shows what was compared. */
    public void show(List<ComparedOption> options) {
        table.show(options);
        drawChart();
        share();
        table.fit();
    }

    /** Draws the margins of a kind. */
    public void draw(MarginKind which) {
        kind = which;
        drawChart();
        share();
    }

    private void drawChart() {
        chart.show(table.shown(), kind);
    }

    private void sayReasons() {
        if (reasons.isDisposed()) {
            return;
        }
        String text = Stream.concat(table.ofPlaces().stream(), table.cutReasons().stream())
                .collect(Collectors.joining(Text.DELIMITER));
        Composite parent = reasons.getParent();
        GridData place = (GridData) reasons.getLayoutData();
        if (!text.equals(reasons.getText())) {
            reasons.setText(text);
        }
        int room = sash.getSize().y + (place.exclude ? 0 : reasons.getSize().y);
        // beside the chart the table needs no more than its rows: what is left of its height is for the reasons
        double most = sash.getOrientation() == SWT.HORIZONTAL ? Math.max(MOST_REASONS * room, room - table.neededHeight())
                : MOST_REASONS * room;
        int height = (int) Math.min(reasons.computeSize(parent.getClientArea().width, SWT.DEFAULT).y, most);
        if (place.exclude != text.isEmpty() || !text.isEmpty() && place.heightHint != height) {
            place.exclude = text.isEmpty();
            place.heightHint = height;
            reasons.setVisible(!text.isEmpty());
            parent.layout(true);
        }
    }

    /** Returns the table. */
    public OptionTable table() {
        return table;
    }

    /** Returns the chart. */
    public MarginChart chart() {
        return chart;
    }

    /** Returns what stands below: a line for what the place has against it, and one for each option whose reasons are cut in the table. */
    public String reasons() {
        return reasons.getText();
    }
}
