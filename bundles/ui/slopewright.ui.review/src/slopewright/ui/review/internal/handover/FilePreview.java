package slopewright.ui.review.internal.handover;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.events.PaintEvent;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;

import slopewright.report.handover.HandoverFile;
import slopewright.ui.review.internal.Messages;

/** What a file looks like: a picture, the rows of a schedule, the beginning of a text, or a sentence. */
final class FilePreview {

    private static final int MOST_LINES = 400;

    private final Composite area;
    private final StackLayout stack = new StackLayout();
    private final StyledText text;
    private final Canvas canvas;
    private final Table rows;
    private Optional<Image> image = Optional.empty();

    FilePreview(Composite parent) {
        area = new Composite(parent, SWT.BORDER);
        area.setLayout(stack);
        text = new StyledText(area, SWT.READ_ONLY | SWT.V_SCROLL | SWT.H_SCROLL);
        text.setMargins(6, 6, 6, 6);
        canvas = new Canvas(area, SWT.DOUBLE_BUFFERED);
        canvas.addPaintListener(this::paint);
        rows = new Table(area, SWT.V_SCROLL | SWT.H_SCROLL);
        rows.setHeaderVisible(true);
        stack.topControl = text;
        area.addDisposeListener(event -> image.ifPresent(Image::dispose));
    }

    private void top(Control control) {
        stack.topControl = control;
        area.layout();
    }

    void say(String sentence) {
        text.setFont(JFaceResources.getDefaultFont());
        text.setWordWrap(true);
        text.setText(sentence);
        top(text);
    }

    void show(HandoverFile file, byte[] bytes) {
        if (file.picture().isPresent()) {
            image.ifPresent(Image::dispose);
            image = Optional.of(new Image(area.getDisplay(), new ByteArrayInputStream(bytes)));
            canvas.redraw();
            top(canvas);
        } else if (file.extension().equals("csv")) {
            table(new String(bytes, StandardCharsets.UTF_8));
        } else if (List.of("geojson", "kml", "html").contains(file.extension())) {
            text.setFont(JFaceResources.getTextFont());
            text.setWordWrap(false);
            List<String> lines = new String(bytes, StandardCharsets.UTF_8).lines().limit(MOST_LINES).toList();
            text.setText(String.join("\n", lines));
            top(text);
        } else {
            say(Messages.get("handover.size", HandoverPlan.label(file), file.fileName(), (bytes.length + 1023) / 1024));
        }
    }

    private void table(String csv) {
        rows.setRedraw(false);
        rows.removeAll();
        while (rows.getColumnCount() > 0) {
            rows.getColumn(0).dispose();
        }
        List<String> lines = csv.lines().limit(MOST_LINES).toList();
        for (String title : cells(lines.isEmpty() ? "" : lines.get(0))) {
            TableColumn column = new TableColumn(rows, SWT.LEFT);
            column.setText(title);
        }
        lines.stream().skip(1).forEach(line -> new TableItem(rows, SWT.NONE).setText(cells(line).toArray(String[]::new)));
        for (TableColumn column : rows.getColumns()) {
            column.pack();
        }
        rows.setRedraw(true);
        top(rows);
    }

    /** Parts a line of comma-separated values; a quotation mark inside quotation marks stands twice. */
    private static List<String> cells(String line) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (char c : line.toCharArray()) {
            if (c == '"') {
                quoted = !quoted;
            } else if (c == ',' && !quoted) {
                cells.add(cell.toString());
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        cells.add(cell.toString());
        return cells;
    }

    private void paint(PaintEvent event) {
        image.ifPresent(picture -> {
            Rectangle size = picture.getBounds();
            Rectangle room = canvas.getClientArea();
            double scale = Math.min(room.width / (double) size.width, room.height / (double) size.height);
            int width = (int) (size.width * scale);
            int height = (int) (size.height * scale);
            event.gc.setInterpolation(SWT.HIGH);
            event.gc.setAntialias(SWT.ON);
            event.gc.drawImage(picture, 0, 0, size.width, size.height, (room.width - width) / 2, (room.height - height) / 2, width, height);
        });
    }

    /** Returns what is shown in words: the text, the number of rows, or the size of the picture. */
    String shown() {
        if (stack.topControl == canvas) {
            return image.map(picture -> picture.getBounds().width + " x " + picture.getBounds().height).orElse("");
        }
        return stack.topControl == rows ? rows.getItemCount() + " rows" : text.getText();
    }
}
