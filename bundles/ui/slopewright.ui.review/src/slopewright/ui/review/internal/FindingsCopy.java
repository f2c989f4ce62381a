package slopewright.ui.review.internal;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.HTMLTransfer;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;

import slopewright.checks.Outcome;
import slopewright.model.io.AtomicFile;
import slopewright.ui.MessageTexts;

/** Takes outcomes out of the window: to the clipboard, or into a file that the user names. */
public final class FindingsCopy {

    private FindingsCopy() {
    }

    /** Puts outcomes on the clipboard as text and as an HTML table. */
    public static void toClipboard(List<Outcome> outcomes, Display display) {
        if (!outcomes.isEmpty()) {
            Clipboard clipboard = new Clipboard(display);
            clipboard.setContents(new Object[] {FindingsText.tabs(outcomes), FindingsText.html(outcomes)},
                    new Transfer[] {TextTransfer.getInstance(), HTMLTransfer.getInstance()});
            clipboard.dispose();
        }
    }

    /**
     * Asks for a file and writes outcomes into it.
     *
     * @return what there is to say about it; empty where the user named no file
     */
    public static String toFile(List<Outcome> outcomes, Shell shell) {
        FileDialog dialog = new FileDialog(shell, SWT.SAVE);
        dialog.setText(Messages.get("findings.export"));
        dialog.setFilterExtensions(new String[] {"*.csv", "*.html", "*.txt"});
        dialog.setFileName("findings.csv");
        dialog.setOverwrite(true);
        String name = dialog.open();
        return name == null ? "" : write(outcomes, Path.of(name));
    }

    /** Writes outcomes into a file, in the form that its name asks for, and returns what there is to say about it. */
    public static String write(List<Outcome> outcomes, Path file) {
        try {
            AtomicFile.replace(file, FindingsText.file(outcomes, String.valueOf(file.getFileName())));
            return Messages.get("findings.exported", outcomes.size(), file);
        } catch (IOException e) {
            return file + ": " + MessageTexts.reason(e);
        }
    }
}
