package slopewright.edit;

import slopewright.geometry.FramePoint;
import slopewright.messages.Message;
import slopewright.model.Aerodrome;
import slopewright.model.ApproachHost;
import slopewright.model.Obstacle;
import slopewright.model.ObstacleKind;
import slopewright.model.Place;
import slopewright.model.Project;
import slopewright.model.SlopewrightFactory;
import slopewright.model.SlopewrightPackage;
import slopewright.model.util.Projects;
import slopewright.siting.site.SiteFrame;

/** Adds an obstacle to an aerodrome. */
public final class AddObstacle {

    private AddObstacle() {
    }

    /**
     * Adds an obstacle that was made elsewhere.
     *
     * @param aerodrome the aerodrome
     * @param obstacle  an obstacle that is nowhere yet
     */
    public static AddChild of(Aerodrome aerodrome, Obstacle obstacle) {
        return AddChild.named("Add obstacle", aerodrome, SlopewrightPackage.Literals.AERODROME__OBSTACLES, obstacle);
    }

    /**
     * Adds a point obstacle at a place seen from a runway end or helipad.
     *
     * @param host the runway end or approach direction
     * @param top  the top of the obstacle in the frame of the host
     * @param name what it is called
     * @throws slopewright.siting.SitingException where place, bearing or elevation of the host are missing; the message names what
     * @throws EditException                      where the host belongs to no aerodrome
     */
    public static AddChild at(ApproachHost host, FramePoint top, String name) {
        Aerodrome aerodrome = Projects.project(host).map(Project::getAerodrome)
                .orElseThrow(() -> new EditException(Message.said("edit.no-aerodrome-of", Projects.label(host))));
        Place place = SlopewrightFactory.eINSTANCE.createPlace();
        SiteFrame frame = SiteFrame.of(host);
        frame.fromFrame(top, place);
        place.setElevationM(null);
        Obstacle obstacle = SlopewrightFactory.eINSTANCE.createObstacle();
        obstacle.setName(name);
        obstacle.setKind(ObstacleKind.POINT);
        obstacle.getPlaces().add(place);
        obstacle.setTopElevationM(Math.round((frame.originElevationM() + top.heightM()) * 1000) / 1000.0);
        return of(aerodrome, obstacle);
    }
}
