/**
 */
package slopewright.model.impl;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

import slopewright.model.Place;
import slopewright.model.ProfilePoint;
import slopewright.model.RunwayEnd;
import slopewright.model.SlopewrightPackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Runway End</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link slopewright.model.impl.RunwayEndImpl#getThreshold <em>Threshold</em>}</li>
 *   <li>{@link slopewright.model.impl.RunwayEndImpl#getTrueBearingDeg <em>True Bearing Deg</em>}</li>
 *   <li>{@link slopewright.model.impl.RunwayEndImpl#getThresholdElevationM <em>Threshold Elevation M</em>}</li>
 *   <li>{@link slopewright.model.impl.RunwayEndImpl#getDisplacedThresholdM <em>Displaced Threshold M</em>}</li>
 *   <li>{@link slopewright.model.impl.RunwayEndImpl#getExtremityElevationM <em>Extremity Elevation M</em>}</li>
 *   <li>{@link slopewright.model.impl.RunwayEndImpl#getLandingDistanceM <em>Landing Distance M</em>}</li>
 *   <li>{@link slopewright.model.impl.RunwayEndImpl#getAimingPointDistanceM <em>Aiming Point Distance M</em>}</li>
 *   <li>{@link slopewright.model.impl.RunwayEndImpl#getSiteProfile <em>Site Profile</em>}</li>
 *   <li>{@link slopewright.model.impl.RunwayEndImpl#getHazardousTerrain <em>Hazardous Terrain</em>}</li>
 *   <li>{@link slopewright.model.impl.RunwayEndImpl#getSiteProfileSource <em>Site Profile Source</em>}</li>
 *   <li>{@link slopewright.model.impl.RunwayEndImpl#getSiteProfileDate <em>Site Profile Date</em>}</li>
 *   <li>{@link slopewright.model.impl.RunwayEndImpl#getSiteProfileAccuracyM <em>Site Profile Accuracy M</em>}</li>
 * </ul>
 *
 * @generated
 */
public class RunwayEndImpl extends ApproachHostImpl implements RunwayEnd {
	/**
	 * The cached value of the '{@link #getThreshold() <em>Threshold</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getThreshold()
	 * @generated
	 * @ordered
	 */
	protected Place threshold;

	/**
	 * The default value of the '{@link #getTrueBearingDeg() <em>True Bearing Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTrueBearingDeg()
	 * @generated
	 * @ordered
	 */
	protected static final Double TRUE_BEARING_DEG_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTrueBearingDeg() <em>True Bearing Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTrueBearingDeg()
	 * @generated
	 * @ordered
	 */
	protected Double trueBearingDeg = TRUE_BEARING_DEG_EDEFAULT;

	/**
	 * The default value of the '{@link #getThresholdElevationM() <em>Threshold Elevation M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getThresholdElevationM()
	 * @generated
	 * @ordered
	 */
	protected static final Double THRESHOLD_ELEVATION_M_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getThresholdElevationM() <em>Threshold Elevation M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getThresholdElevationM()
	 * @generated
	 * @ordered
	 */
	protected Double thresholdElevationM = THRESHOLD_ELEVATION_M_EDEFAULT;

	/**
	 * The default value of the '{@link #getDisplacedThresholdM() <em>Displaced Threshold M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDisplacedThresholdM()
	 * @generated
	 * @ordered
	 */
	protected static final Double DISPLACED_THRESHOLD_M_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDisplacedThresholdM() <em>Displaced Threshold M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDisplacedThresholdM()
	 * @generated
	 * @ordered
	 */
	protected Double displacedThresholdM = DISPLACED_THRESHOLD_M_EDEFAULT;

	/**
	 * The default value of the '{@link #getExtremityElevationM() <em>Extremity Elevation M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getExtremityElevationM()
	 * @generated
	 * @ordered
	 */
	protected static final Double EXTREMITY_ELEVATION_M_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getExtremityElevationM() <em>Extremity Elevation M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getExtremityElevationM()
	 * @generated
	 * @ordered
	 */
	protected Double extremityElevationM = EXTREMITY_ELEVATION_M_EDEFAULT;

	/**
	 * The default value of the '{@link #getLandingDistanceM() <em>Landing Distance M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLandingDistanceM()
	 * @generated
	 * @ordered
	 */
	protected static final Double LANDING_DISTANCE_M_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLandingDistanceM() <em>Landing Distance M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLandingDistanceM()
	 * @generated
	 * @ordered
	 */
	protected Double landingDistanceM = LANDING_DISTANCE_M_EDEFAULT;

	/**
	 * The default value of the '{@link #getAimingPointDistanceM() <em>Aiming Point Distance M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAimingPointDistanceM()
	 * @generated
	 * @ordered
	 */
	protected static final Double AIMING_POINT_DISTANCE_M_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getAimingPointDistanceM() <em>Aiming Point Distance M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAimingPointDistanceM()
	 * @generated
	 * @ordered
	 */
	protected Double aimingPointDistanceM = AIMING_POINT_DISTANCE_M_EDEFAULT;

	/**
	 * The cached value of the '{@link #getSiteProfile() <em>Site Profile</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSiteProfile()
	 * @generated
	 * @ordered
	 */
	protected EList<ProfilePoint> siteProfile;

	/**
	 * The default value of the '{@link #getHazardousTerrain() <em>Hazardous Terrain</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHazardousTerrain()
	 * @generated
	 * @ordered
	 */
	protected static final Boolean HAZARDOUS_TERRAIN_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getHazardousTerrain() <em>Hazardous Terrain</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHazardousTerrain()
	 * @generated
	 * @ordered
	 */
	protected Boolean hazardousTerrain = HAZARDOUS_TERRAIN_EDEFAULT;

	/**
	 * The default value of the '{@link #getSiteProfileSource() <em>Site Profile Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSiteProfileSource()
	 * @generated
	 * @ordered
	 */
	protected static final String SITE_PROFILE_SOURCE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSiteProfileSource() <em>Site Profile Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSiteProfileSource()
	 * @generated
	 * @ordered
	 */
	protected String siteProfileSource = SITE_PROFILE_SOURCE_EDEFAULT;

	/**
	 * The default value of the '{@link #getSiteProfileDate() <em>Site Profile Date</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSiteProfileDate()
	 * @generated
	 * @ordered
	 */
	protected static final String SITE_PROFILE_DATE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSiteProfileDate() <em>Site Profile Date</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSiteProfileDate()
	 * @generated
	 * @ordered
	 */
	protected String siteProfileDate = SITE_PROFILE_DATE_EDEFAULT;

	/**
	 * The default value of the '{@link #getSiteProfileAccuracyM() <em>Site Profile Accuracy M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSiteProfileAccuracyM()
	 * @generated
	 * @ordered
	 */
	protected static final Double SITE_PROFILE_ACCURACY_M_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSiteProfileAccuracyM() <em>Site Profile Accuracy M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSiteProfileAccuracyM()
	 * @generated
	 * @ordered
	 */
	protected Double siteProfileAccuracyM = SITE_PROFILE_ACCURACY_M_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected RunwayEndImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return SlopewrightPackage.Literals.RUNWAY_END;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Place getThreshold() {
		return threshold;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetThreshold(Place newThreshold, NotificationChain msgs) {
		Place oldThreshold = threshold;
		threshold = newThreshold;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, SlopewrightPackage.RUNWAY_END__THRESHOLD, oldThreshold, newThreshold);
			if (msgs == null) msgs = notification; else msgs.add(notification);
		}
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setThreshold(Place newThreshold) {
		if (newThreshold != threshold) {
			NotificationChain msgs = null;
			if (threshold != null)
				msgs = ((InternalEObject)threshold).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - SlopewrightPackage.RUNWAY_END__THRESHOLD, null, msgs);
			if (newThreshold != null)
				msgs = ((InternalEObject)newThreshold).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - SlopewrightPackage.RUNWAY_END__THRESHOLD, null, msgs);
			msgs = basicSetThreshold(newThreshold, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.RUNWAY_END__THRESHOLD, newThreshold, newThreshold));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getTrueBearingDeg() {
		return trueBearingDeg;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTrueBearingDeg(Double newTrueBearingDeg) {
		Double oldTrueBearingDeg = trueBearingDeg;
		trueBearingDeg = newTrueBearingDeg;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.RUNWAY_END__TRUE_BEARING_DEG, oldTrueBearingDeg, trueBearingDeg));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getThresholdElevationM() {
		return thresholdElevationM;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setThresholdElevationM(Double newThresholdElevationM) {
		Double oldThresholdElevationM = thresholdElevationM;
		thresholdElevationM = newThresholdElevationM;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.RUNWAY_END__THRESHOLD_ELEVATION_M, oldThresholdElevationM, thresholdElevationM));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getDisplacedThresholdM() {
		return displacedThresholdM;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDisplacedThresholdM(Double newDisplacedThresholdM) {
		Double oldDisplacedThresholdM = displacedThresholdM;
		displacedThresholdM = newDisplacedThresholdM;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.RUNWAY_END__DISPLACED_THRESHOLD_M, oldDisplacedThresholdM, displacedThresholdM));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getExtremityElevationM() {
		return extremityElevationM;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setExtremityElevationM(Double newExtremityElevationM) {
		Double oldExtremityElevationM = extremityElevationM;
		extremityElevationM = newExtremityElevationM;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.RUNWAY_END__EXTREMITY_ELEVATION_M, oldExtremityElevationM, extremityElevationM));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getLandingDistanceM() {
		return landingDistanceM;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLandingDistanceM(Double newLandingDistanceM) {
		Double oldLandingDistanceM = landingDistanceM;
		landingDistanceM = newLandingDistanceM;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.RUNWAY_END__LANDING_DISTANCE_M, oldLandingDistanceM, landingDistanceM));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getAimingPointDistanceM() {
		return aimingPointDistanceM;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAimingPointDistanceM(Double newAimingPointDistanceM) {
		Double oldAimingPointDistanceM = aimingPointDistanceM;
		aimingPointDistanceM = newAimingPointDistanceM;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.RUNWAY_END__AIMING_POINT_DISTANCE_M, oldAimingPointDistanceM, aimingPointDistanceM));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<ProfilePoint> getSiteProfile() {
		if (siteProfile == null) {
			siteProfile = new EObjectContainmentEList<ProfilePoint>(ProfilePoint.class, this, SlopewrightPackage.RUNWAY_END__SITE_PROFILE);
		}
		return siteProfile;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Boolean getHazardousTerrain() {
		return hazardousTerrain;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHazardousTerrain(Boolean newHazardousTerrain) {
		Boolean oldHazardousTerrain = hazardousTerrain;
		hazardousTerrain = newHazardousTerrain;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.RUNWAY_END__HAZARDOUS_TERRAIN, oldHazardousTerrain, hazardousTerrain));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSiteProfileSource() {
		return siteProfileSource;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSiteProfileSource(String newSiteProfileSource) {
		String oldSiteProfileSource = siteProfileSource;
		siteProfileSource = newSiteProfileSource;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.RUNWAY_END__SITE_PROFILE_SOURCE, oldSiteProfileSource, siteProfileSource));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSiteProfileDate() {
		return siteProfileDate;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSiteProfileDate(String newSiteProfileDate) {
		String oldSiteProfileDate = siteProfileDate;
		siteProfileDate = newSiteProfileDate;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.RUNWAY_END__SITE_PROFILE_DATE, oldSiteProfileDate, siteProfileDate));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getSiteProfileAccuracyM() {
		return siteProfileAccuracyM;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSiteProfileAccuracyM(Double newSiteProfileAccuracyM) {
		Double oldSiteProfileAccuracyM = siteProfileAccuracyM;
		siteProfileAccuracyM = newSiteProfileAccuracyM;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.RUNWAY_END__SITE_PROFILE_ACCURACY_M, oldSiteProfileAccuracyM, siteProfileAccuracyM));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case SlopewrightPackage.RUNWAY_END__THRESHOLD:
				return basicSetThreshold(null, msgs);
			case SlopewrightPackage.RUNWAY_END__SITE_PROFILE:
				return ((InternalEList<?>)getSiteProfile()).basicRemove(otherEnd, msgs);
		}
		return super.eInverseRemove(otherEnd, featureID, msgs);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case SlopewrightPackage.RUNWAY_END__THRESHOLD:
				return getThreshold();
			case SlopewrightPackage.RUNWAY_END__TRUE_BEARING_DEG:
				return getTrueBearingDeg();
			case SlopewrightPackage.RUNWAY_END__THRESHOLD_ELEVATION_M:
				return getThresholdElevationM();
			case SlopewrightPackage.RUNWAY_END__DISPLACED_THRESHOLD_M:
				return getDisplacedThresholdM();
			case SlopewrightPackage.RUNWAY_END__EXTREMITY_ELEVATION_M:
				return getExtremityElevationM();
			case SlopewrightPackage.RUNWAY_END__LANDING_DISTANCE_M:
				return getLandingDistanceM();
			case SlopewrightPackage.RUNWAY_END__AIMING_POINT_DISTANCE_M:
				return getAimingPointDistanceM();
			case SlopewrightPackage.RUNWAY_END__SITE_PROFILE:
				return getSiteProfile();
			case SlopewrightPackage.RUNWAY_END__HAZARDOUS_TERRAIN:
				return getHazardousTerrain();
			case SlopewrightPackage.RUNWAY_END__SITE_PROFILE_SOURCE:
				return getSiteProfileSource();
			case SlopewrightPackage.RUNWAY_END__SITE_PROFILE_DATE:
				return getSiteProfileDate();
			case SlopewrightPackage.RUNWAY_END__SITE_PROFILE_ACCURACY_M:
				return getSiteProfileAccuracyM();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case SlopewrightPackage.RUNWAY_END__THRESHOLD:
				setThreshold((Place)newValue);
				return;
			case SlopewrightPackage.RUNWAY_END__TRUE_BEARING_DEG:
				setTrueBearingDeg((Double)newValue);
				return;
			case SlopewrightPackage.RUNWAY_END__THRESHOLD_ELEVATION_M:
				setThresholdElevationM((Double)newValue);
				return;
			case SlopewrightPackage.RUNWAY_END__DISPLACED_THRESHOLD_M:
				setDisplacedThresholdM((Double)newValue);
				return;
			case SlopewrightPackage.RUNWAY_END__EXTREMITY_ELEVATION_M:
				setExtremityElevationM((Double)newValue);
				return;
			case SlopewrightPackage.RUNWAY_END__LANDING_DISTANCE_M:
				setLandingDistanceM((Double)newValue);
				return;
			case SlopewrightPackage.RUNWAY_END__AIMING_POINT_DISTANCE_M:
				setAimingPointDistanceM((Double)newValue);
				return;
			case SlopewrightPackage.RUNWAY_END__SITE_PROFILE:
				getSiteProfile().clear();
				getSiteProfile().addAll((Collection<? extends ProfilePoint>)newValue);
				return;
			case SlopewrightPackage.RUNWAY_END__HAZARDOUS_TERRAIN:
				setHazardousTerrain((Boolean)newValue);
				return;
			case SlopewrightPackage.RUNWAY_END__SITE_PROFILE_SOURCE:
				setSiteProfileSource((String)newValue);
				return;
			case SlopewrightPackage.RUNWAY_END__SITE_PROFILE_DATE:
				setSiteProfileDate((String)newValue);
				return;
			case SlopewrightPackage.RUNWAY_END__SITE_PROFILE_ACCURACY_M:
				setSiteProfileAccuracyM((Double)newValue);
				return;
		}
		super.eSet(featureID, newValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eUnset(int featureID) {
		switch (featureID) {
			case SlopewrightPackage.RUNWAY_END__THRESHOLD:
				setThreshold((Place)null);
				return;
			case SlopewrightPackage.RUNWAY_END__TRUE_BEARING_DEG:
				setTrueBearingDeg(TRUE_BEARING_DEG_EDEFAULT);
				return;
			case SlopewrightPackage.RUNWAY_END__THRESHOLD_ELEVATION_M:
				setThresholdElevationM(THRESHOLD_ELEVATION_M_EDEFAULT);
				return;
			case SlopewrightPackage.RUNWAY_END__DISPLACED_THRESHOLD_M:
				setDisplacedThresholdM(DISPLACED_THRESHOLD_M_EDEFAULT);
				return;
			case SlopewrightPackage.RUNWAY_END__EXTREMITY_ELEVATION_M:
				setExtremityElevationM(EXTREMITY_ELEVATION_M_EDEFAULT);
				return;
			case SlopewrightPackage.RUNWAY_END__LANDING_DISTANCE_M:
				setLandingDistanceM(LANDING_DISTANCE_M_EDEFAULT);
				return;
			case SlopewrightPackage.RUNWAY_END__AIMING_POINT_DISTANCE_M:
				setAimingPointDistanceM(AIMING_POINT_DISTANCE_M_EDEFAULT);
				return;
			case SlopewrightPackage.RUNWAY_END__SITE_PROFILE:
				getSiteProfile().clear();
				return;
			case SlopewrightPackage.RUNWAY_END__HAZARDOUS_TERRAIN:
				setHazardousTerrain(HAZARDOUS_TERRAIN_EDEFAULT);
				return;
			case SlopewrightPackage.RUNWAY_END__SITE_PROFILE_SOURCE:
				setSiteProfileSource(SITE_PROFILE_SOURCE_EDEFAULT);
				return;
			case SlopewrightPackage.RUNWAY_END__SITE_PROFILE_DATE:
				setSiteProfileDate(SITE_PROFILE_DATE_EDEFAULT);
				return;
			case SlopewrightPackage.RUNWAY_END__SITE_PROFILE_ACCURACY_M:
				setSiteProfileAccuracyM(SITE_PROFILE_ACCURACY_M_EDEFAULT);
				return;
		}
		super.eUnset(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean eIsSet(int featureID) {
		switch (featureID) {
			case SlopewrightPackage.RUNWAY_END__THRESHOLD:
				return threshold != null;
			case SlopewrightPackage.RUNWAY_END__TRUE_BEARING_DEG:
				return TRUE_BEARING_DEG_EDEFAULT == null ? trueBearingDeg != null : !TRUE_BEARING_DEG_EDEFAULT.equals(trueBearingDeg);
			case SlopewrightPackage.RUNWAY_END__THRESHOLD_ELEVATION_M:
				return THRESHOLD_ELEVATION_M_EDEFAULT == null ? thresholdElevationM != null : !THRESHOLD_ELEVATION_M_EDEFAULT.equals(thresholdElevationM);
			case SlopewrightPackage.RUNWAY_END__DISPLACED_THRESHOLD_M:
				return DISPLACED_THRESHOLD_M_EDEFAULT == null ? displacedThresholdM != null : !DISPLACED_THRESHOLD_M_EDEFAULT.equals(displacedThresholdM);
			case SlopewrightPackage.RUNWAY_END__EXTREMITY_ELEVATION_M:
				return EXTREMITY_ELEVATION_M_EDEFAULT == null ? extremityElevationM != null : !EXTREMITY_ELEVATION_M_EDEFAULT.equals(extremityElevationM);
			case SlopewrightPackage.RUNWAY_END__LANDING_DISTANCE_M:
				return LANDING_DISTANCE_M_EDEFAULT == null ? landingDistanceM != null : !LANDING_DISTANCE_M_EDEFAULT.equals(landingDistanceM);
			case SlopewrightPackage.RUNWAY_END__AIMING_POINT_DISTANCE_M:
				return AIMING_POINT_DISTANCE_M_EDEFAULT == null ? aimingPointDistanceM != null : !AIMING_POINT_DISTANCE_M_EDEFAULT.equals(aimingPointDistanceM);
			case SlopewrightPackage.RUNWAY_END__SITE_PROFILE:
				return siteProfile != null && !siteProfile.isEmpty();
			case SlopewrightPackage.RUNWAY_END__HAZARDOUS_TERRAIN:
				return HAZARDOUS_TERRAIN_EDEFAULT == null ? hazardousTerrain != null : !HAZARDOUS_TERRAIN_EDEFAULT.equals(hazardousTerrain);
			case SlopewrightPackage.RUNWAY_END__SITE_PROFILE_SOURCE:
				return SITE_PROFILE_SOURCE_EDEFAULT == null ? siteProfileSource != null : !SITE_PROFILE_SOURCE_EDEFAULT.equals(siteProfileSource);
			case SlopewrightPackage.RUNWAY_END__SITE_PROFILE_DATE:
				return SITE_PROFILE_DATE_EDEFAULT == null ? siteProfileDate != null : !SITE_PROFILE_DATE_EDEFAULT.equals(siteProfileDate);
			case SlopewrightPackage.RUNWAY_END__SITE_PROFILE_ACCURACY_M:
				return SITE_PROFILE_ACCURACY_M_EDEFAULT == null ? siteProfileAccuracyM != null : !SITE_PROFILE_ACCURACY_M_EDEFAULT.equals(siteProfileAccuracyM);
		}
		return super.eIsSet(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String toString() {
		if (eIsProxy()) return super.toString();

		StringBuilder result = new StringBuilder(super.toString());
		result.append(" (trueBearingDeg: ");
		result.append(trueBearingDeg);
		result.append(", thresholdElevationM: ");
		result.append(thresholdElevationM);
		result.append(", displacedThresholdM: ");
		result.append(displacedThresholdM);
		result.append(", extremityElevationM: ");
		result.append(extremityElevationM);
		result.append(", landingDistanceM: ");
		result.append(landingDistanceM);
		result.append(", aimingPointDistanceM: ");
		result.append(aimingPointDistanceM);
		result.append(", hazardousTerrain: ");
		result.append(hazardousTerrain);
		result.append(", siteProfileSource: ");
		result.append(siteProfileSource);
		result.append(", siteProfileDate: ");
		result.append(siteProfileDate);
		result.append(", siteProfileAccuracyM: ");
		result.append(siteProfileAccuracyM);
		result.append(')');
		return result.toString();
	}

} //RunwayEndImpl
