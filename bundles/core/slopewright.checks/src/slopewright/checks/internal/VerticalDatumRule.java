package slopewright.checks.internal;

import slopewright.checks.CheckContext;
import slopewright.checks.Findings;
import slopewright.checks.Rule;
import slopewright.checks.Severity;
import slopewright.model.Aerodrome;

/** Heights are differences of elevations, so all must count from the same named datum. */
public final class VerticalDatumRule implements Rule {

    @Override
    public String id() {
        return "DATA-12";
    }

    @Override
    public String title() {
        return "Vertical datum is named";
    }

    @Override
    public String description() {
        return "The aerodrome names the vertical datum from which all elevations count.";
    }

    @Override
    public Severity severity() {
        return Severity.WARNING;
    }

    @Override
    public void check(CheckContext context, Findings findings) {
        Aerodrome aerodrome = context.project().getAerodrome();
        if (aerodrome != null && !context.aids().isEmpty()) {
            Missing missing = new Missing();
            missing.unless(aerodrome.getVerticalDatum() != null && !aerodrome.getVerticalDatum().isBlank(), "vertical datum");
            Missing.report(findings, aerodrome, missing.names(), "Elevations count from " + aerodrome.getVerticalDatum() + ".");
        }
    }
}
