package slopewright.rcp.internal.site;

import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.IMessageProvider;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.BusyIndicator;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;

import slopewright.evaluation.site.KnownRunway;
import slopewright.exchange.ExchangeException;
import slopewright.exchange.runways.OpenAirport;
import slopewright.exchange.runways.RunwayData;
import slopewright.exchange.runways.RunwayOffer;
import slopewright.rcp.internal.Messages;
import slopewright.ui.AccessibleName;
import slopewright.ui.MessageTexts;
import slopewright.ui.preferences.Preferences;
import slopewright.ui.units.Quantity;
import slopewright.ui.units.QuantityFormat;

/**
 * Asks for a runway end of open data: the file, the code of the airport, one of its ends, and the licence. What is taken over of an end,
 * and what does not fit together in the data, stands below the list.
 */
final class RunwayDataDialog extends TitleAreaDialog {
    private static final String FILE_KEY = "runwayDataFile";
    private static final int WIDE = 640;
    private static final int DETAIL_HEIGHT = 150;
    private static final int LIST_HEIGHT = 120;

    private Text file;
    private Text code;
    private Text licence;
    private Table ends;
    private Text details;
    private Optional<RunwayData> data = Optional.empty();
    private Optional<OpenAirport> airport = Optional.empty();
    private List<RunwayOffer> offers = List.of();
    private Optional<KnownRunway> chosen = Optional.empty();

    RunwayDataDialog(Shell parent) {
        super(parent);
        setShellStyle(getShellStyle() | SWT.RESIZE);
    }

    /** Returns the runway with the end that was chosen; empty where none was. */
    Optional<KnownRunway> chosen() {
        return chosen;
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText(Messages.get("runway-data.title"));
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        setTitle(Messages.get("runway-data.title"));
        Composite area = new Composite((Composite) super.createDialogArea(parent), SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(area);
        GridLayoutFactory.swtDefaults().numColumns(3).applyTo(area);
        file = text(area, "runway-data.file", 1);
        Button browse = new Button(area, SWT.PUSH);
        browse.setText(Messages.get("runway-data.browse"));
        browse.addListener(SWT.Selection, event -> browse());
        code = text(area, "runway-data.code", 2);
        ends = new Table(area, SWT.BORDER | SWT.SINGLE | SWT.FULL_SELECTION | SWT.V_SCROLL);
        AccessibleName.give(ends, getShell().getText());
        ends.setHeaderVisible(true);
        column("runway-data.end", 70);
        column("runway-data.bearing", 160);
        column("runway-data.length", 100);
        column("runway-data.elevation", 120);
        column("runway-data.verdict", 240);
        ends.addListener(SWT.Selection, event -> choose());
        GridDataFactory.fillDefaults().grab(true, true).span(3, 1).hint(WIDE, LIST_HEIGHT).applyTo(ends);
        details = new Text(area, SWT.MULTI | SWT.READ_ONLY | SWT.WRAP | SWT.V_SCROLL | SWT.BORDER);
        GridDataFactory.fillDefaults().grab(true, true).span(3, 1).hint(WIDE, DETAIL_HEIGHT).applyTo(details);
        licence = text(area, "runway-data.licence", 2);
        file.setText(Preferences.store().getString(FILE_KEY));
        file.addListener(SWT.Modify, event -> BusyIndicator.showWhile(file.getDisplay(), this::read));
        code.addListener(SWT.Modify, event -> BusyIndicator.showWhile(code.getDisplay(), this::find));
        licence.addListener(SWT.Modify, event -> offer());
        return area;
    }

    @Override
    protected Control createContents(Composite parent) {
        Control contents = super.createContents(parent);
        read();
        (file.getText().isEmpty() ? file : code).setFocus();
        return contents;
    }

    private Text text(Composite area, String key, int columns) {
        new Label(area, SWT.NONE).setText(Messages.get(key));
        Text text = new Text(area, SWT.BORDER);
        text.setData("question", key);
        GridDataFactory.fillDefaults().grab(true, false).span(columns, 1).applyTo(text);
        return text;
    }

    private void column(String key, int width) {
        TableColumn column = new TableColumn(ends, SWT.NONE);
        column.setText(Messages.get(key));
        column.setWidth(width);
    }

    private void browse() {
        FileDialog dialog = new FileDialog(getShell(), SWT.OPEN);
        dialog.setText(Messages.get("runway-data.title"));
        dialog.setFilterExtensions(new String[] {"*.sqlite;*.sqlite3;*.db;*.csv", "*"});
        Optional.ofNullable(dialog.open()).ifPresent(file::setText);
        code.setFocus();
    }

    private void read() {
        data = Optional.empty();
        Optional<String> fault = Optional.empty();
        if (!file.getText().isBlank()) {
            try {
                data = Optional.of(RunwayData.read(Path.of(file.getText().strip())));
                Preferences.store().setValue(FILE_KEY, file.getText().strip());
                licence.setText(data.get().licence().orElse(""));
            } catch (IOException | ExchangeException | InvalidPathException e) {
                fault = Optional.of(MessageTexts.reason(e));
            }
        }
        find(fault);
    }

    private void find() {
        find(Optional.empty());
    }

    private void find(Optional<String> fault) {
        airport = Optional.empty();
        Optional<String> reason = fault;
        if (data.isPresent() && !code.getText().isBlank()) {
            try {
                airport = data.get().find(code.getText());
            } catch (ExchangeException e) {
                reason = Optional.of(MessageTexts.reason(e));
            }
        }
        setErrorMessage(reason.orElse(null));
        offer();
    }

    private void offer() {
        int before = ends.getSelectionIndex();
        List<RunwayOffer> found = airport.isEmpty() ? List.of() : data.orElseThrow().offers(airport.get(), licence.getText().strip(),
                LocalDate.now());
        boolean same = found.stream().map(RunwayOffer::ident).toList().equals(offers.stream().map(RunwayOffer::ident).toList());
        offers = found;
        ends.removeAll();
        offers.forEach(offer -> new TableItem(ends, SWT.NONE).setText(row(offer)));
        int first = offers.stream().map(offer -> offer.known().isPresent()).toList().indexOf(true);
        ends.select(same && before >= 0 ? before : Math.max(0, first));
        choose();
    }

    private static String[] row(RunwayOffer offer) {
        QuantityFormat format = QuantityFormat.preferred();
        if (offer.known().isEmpty()) {
            return new String[] {offer.ident(), "", "", "", MessageTexts.of(offer.refused().orElseThrow())};
        }
        KnownRunway known = offer.known().get();
        return new String[] {offer.ident(), format.showWithUnit(known.first().bearingDeg(), Quantity.ANGLE),
            size(known.lengthM()), size(known.first().elevationM()), Messages.get("runway-data.to-confirm")};
    }

    private void choose() {
        int index = ends.getSelectionIndex();
        Optional<RunwayOffer> offer = index < 0 ? Optional.empty() : Optional.of(offers.get(index));
        chosen = offer.flatMap(RunwayOffer::known);
        details.setText(chosen.map(RunwayDataDialog::words).or(() -> offer.flatMap(RunwayOffer::refused).map(MessageTexts::of)).orElse(""));
        boolean licensed = !licence.getText().isBlank();
        setMessage(data.isEmpty() ? Messages.get("runway-data.hint")
                : code.getText().isBlank() ? Messages.get("runway-data.type-code")
                : airport.isEmpty() ? Messages.get("runway-data.no-airport", code.getText().strip())
                : offers.isEmpty() ? Messages.get("runway-data.no-ends", airport.get().name())
                : !licensed ? Messages.get("runway-data.no-licence")
                : Messages.get("runway-data.found", airport.get().name(), airport.get().code()),
                airport.isPresent() && (!licensed || offers.isEmpty()) ? IMessageProvider.WARNING : IMessageProvider.INFORMATION);
        Button ok = getButton(IDialogConstants.OK_ID);
        if (ok != null) {
            ok.setEnabled(chosen.isPresent() && licensed);
        }
    }

    /** What the project will hold of it, line by line, and what does not fit together in the data. */
    private static String words(KnownRunway known) {
        StringBuilder words = new StringBuilder();
        end(words, known.first());
        known.other().ifPresent(other -> end(words, other));
        words.append(Messages.get("runway-data.size", size(known.lengthM()), size(known.widthM()), known.surface().orElse(Messages.get(
                "runway-data.unknown")))).append('\n');
        known.notes().forEach(note -> words.append(MessageTexts.of(note)).append('\n'));
        return words.append(Messages.get("runway-data.source", known.source())).toString();
    }

    private static String size(OptionalDouble metres) {
        return metres.isPresent() ? QuantityFormat.preferred().showWithUnit(metres.getAsDouble(), Quantity.LENGTH)
                : Messages.get("runway-data.unknown");
    }

    private static void end(StringBuilder words, KnownRunway.End end) {
        QuantityFormat format = QuantityFormat.preferred();
        words.append(Messages.get("runway-data.threshold", end.designator(), format.showWithUnit(end.latitudeDeg(), Quantity.LATITUDE),
                format.showWithUnit(end.longitudeDeg(), Quantity.LONGITUDE), format.showWithUnit(end.bearingDeg(), Quantity.ANGLE),
                size(end.elevationM()))).append('\n');
    }
}
