package slopewright.ui.plan.internal.survey;

import java.nio.charset.Charset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.jface.preference.IPreferenceStore;

import slopewright.exchange.survey.TableForm;
import slopewright.ui.preferences.Preferences;

/** How tables were read before: one with the same columns is offered to be read the same way. */
final class KeptForms {

    private static final String KEY = "importTable.";
    private static final String BETWEEN = "\u001f";
    private static final int FIXED = 4;

    private KeptForms() {
    }

    private static String key(List<String> columns) {
        return KEY + Integer.toHexString(String.join(BETWEEN, columns).hashCode()) + "." + columns.size();
    }

    /** Keeps how a table with some columns was read. */
    static void keep(List<String> columns, TableForm form) {
        StringBuilder text = new StringBuilder().append((int) form.separator()).append(BETWEEN).append(form.decimalComma()).append(BETWEEN)
                .append(form.feet()).append(BETWEEN).append(form.encoding().name());
        columns.forEach(column -> text.append(BETWEEN).append(column).append('=').append(form.columns().getOrDefault(column, "")));
        Preferences.store().setValue(key(columns), text.toString());
    }

    /** Returns how a table with the same columns was read last, empty where none was. */
    static Optional<TableForm> of(List<String> columns) {
        IPreferenceStore store = Preferences.store();
        String[] parts = store.getString(key(columns)).split(BETWEEN, -1);
        if (parts.length != FIXED + columns.size()) {
            return Optional.empty();
        }
        try {
            Map<String, String> meanings = new LinkedHashMap<>();
            for (int i = 0; i < columns.size(); i++) {
                String part = parts[FIXED + i];
                String meaning = part.substring(part.lastIndexOf('=') + 1);
                boolean known = meaning.isEmpty() || TableForm.MEANINGS.contains(meaning);
                if (!part.startsWith(columns.get(i) + "=") || !known) {
                    return Optional.empty();
                }
                meanings.put(columns.get(i), meaning);
            }
            return Optional.of(new TableForm((char) Integer.parseInt(parts[0]), Boolean.parseBoolean(parts[1]),
                    Boolean.parseBoolean(parts[2]), Charset.forName(parts[3]), meanings));
        } catch (IllegalArgumentException e) {
            return Optional.empty();
        }
    }
}
