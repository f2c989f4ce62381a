package slopewright.witness;

/** EASA and Australia: what differs from the ICAO numbers. Cells: name, number, provenance (p, s, d, m), clause. */
final class TextNational {
    static final String TEXT = """
        @easa all
        surface.visual.1.inner-edge-m|60|p|Table M-2
        surface.visual.2.inner-edge-m|80|p|Table M-2
        surface.visual.3.inner-edge-m|150|p|Table M-2
        surface.visual.4.inner-edge-m|150|p|Table M-2
        surface.instrument.1.inner-edge-m|150|p|Table M-2
        surface.instrument.2.inner-edge-m|150|p|Table M-2
        surface.instrument.3.inner-edge-m|300|p|Table M-2
        surface.instrument.4.inner-edge-m|300|p|Table M-2
        surface.visual.1.beyond-d1-m|30|p|Table M-2
        surface.visual.2.beyond-d1-m|60|p|Table M-2
        surface.visual.3.beyond-d1-m|60|p|Table M-2
        surface.visual.4.beyond-d1-m|60|p|Table M-2
        surface.instrument.1.beyond-d1-m|60|p|Table M-2
        surface.instrument.2.beyond-d1-m|60|p|Table M-2
        surface.instrument.3.beyond-d1-m|60|p|Table M-2
        surface.instrument.4.beyond-d1-m|60|p|Table M-2
        surface.visual.divergence-percent|10|p|Table M-2
        surface.instrument.divergence-percent|15|p|Table M-2
        @easa four-unit-row
        surface.visual.1.slope-offset-deg|-0.57|m|Table M-2, slopes row cut; pack 6.2
        @casa all
        surface.slope-deg|1.9|p|CASA VASIS page
        surface.divergence-deg|7.5|p|CASA VASIS page
        surface.visual.length-nm|5|p|CASA VASIS page, from the threshold
        surface.instrument.length-nm|7|p|CASA VASIS page, with ILS
        surface.clearance-m|11|p|CASA VASIS page, above the 1.9 degree slope
        surface.older-manual.start-m|150|s|older manual as followed by Indonesia 9.9.3.1
        surface.older-manual.length-m|9000|s|older manual as followed by Indonesia 9.9.3.1
        night-azimuth-deg|30|p|CASA VASIS page
        @casa t-form
        band.bars-only.nominal-ft|49|p|CASA VASIS page
        band.bars-only.from-ft|41|p|CASA VASIS page
        band.bars-only.to-ft|57|p|CASA VASIS page
        band.fly-down-1.to-ft|75|p|CASA VASIS page
        band.fly-down-2.to-ft|94|p|CASA VASIS page
        band.fly-down-3.to-ft|176|p|CASA VASIS page
        band.fly-up-1.from-ft|25|p|CASA VASIS page
        band.fly-up-2.from-ft|7|p|CASA VASIS page
        """;

    private TextNational() {
    }
}
