package slopewright.report.internal.html;

import java.util.ArrayList;
import java.util.List;

/** Names and values in the order of reading. */
public final class Facts {

    private final ReportWords words;
    private final List<List<String>> rows = new ArrayList<>();

    /** Starts without any. */
    public Facts(ReportWords words) {
        this.words = words;
    }

    /**
     * Adds a value.
     *
     * @param key   key of its name, without the prefix {@code report.fact.}
     * @param value the value as text
     * @return this
     */
    public Facts add(String key, String value) {
        rows.add(List.of(words.say("fact." + key), value));
        return this;
    }

    /** Returns names and values. */
    List<List<String>> rows() {
        return rows;
    }
}
