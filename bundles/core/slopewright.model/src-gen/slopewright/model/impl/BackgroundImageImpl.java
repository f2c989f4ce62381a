/**
 */
package slopewright.model.impl;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import slopewright.model.BackgroundImage;
import slopewright.model.Place;
import slopewright.model.SlopewrightPackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Background Image</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link slopewright.model.impl.BackgroundImageImpl#getPath <em>Path</em>}</li>
 *   <li>{@link slopewright.model.impl.BackgroundImageImpl#getSha256 <em>Sha256</em>}</li>
 *   <li>{@link slopewright.model.impl.BackgroundImageImpl#getFirstColumnPx <em>First Column Px</em>}</li>
 *   <li>{@link slopewright.model.impl.BackgroundImageImpl#getFirstRowPx <em>First Row Px</em>}</li>
 *   <li>{@link slopewright.model.impl.BackgroundImageImpl#getFirstPlace <em>First Place</em>}</li>
 *   <li>{@link slopewright.model.impl.BackgroundImageImpl#getSecondColumnPx <em>Second Column Px</em>}</li>
 *   <li>{@link slopewright.model.impl.BackgroundImageImpl#getSecondRowPx <em>Second Row Px</em>}</li>
 *   <li>{@link slopewright.model.impl.BackgroundImageImpl#getSecondPlace <em>Second Place</em>}</li>
 *   <li>{@link slopewright.model.impl.BackgroundImageImpl#getOpacityPercent <em>Opacity Percent</em>}</li>
 *   <li>{@link slopewright.model.impl.BackgroundImageImpl#getHidden <em>Hidden</em>}</li>
 *   <li>{@link slopewright.model.impl.BackgroundImageImpl#getSource <em>Source</em>}</li>
 *   <li>{@link slopewright.model.impl.BackgroundImageImpl#getDate <em>Date</em>}</li>
 * </ul>
 *
 * @generated
 */
public class BackgroundImageImpl extends NamedImpl implements BackgroundImage {
	/**
	 * The default value of the '{@link #getPath() <em>Path</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPath()
	 * @generated
	 * @ordered
	 */
	protected static final String PATH_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPath() <em>Path</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPath()
	 * @generated
	 * @ordered
	 */
	protected String path = PATH_EDEFAULT;

	/**
	 * The default value of the '{@link #getSha256() <em>Sha256</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSha256()
	 * @generated
	 * @ordered
	 */
	protected static final String SHA256_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSha256() <em>Sha256</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSha256()
	 * @generated
	 * @ordered
	 */
	protected String sha256 = SHA256_EDEFAULT;

	/**
	 * The default value of the '{@link #getFirstColumnPx() <em>First Column Px</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFirstColumnPx()
	 * @generated
	 * @ordered
	 */
	protected static final Double FIRST_COLUMN_PX_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFirstColumnPx() <em>First Column Px</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFirstColumnPx()
	 * @generated
	 * @ordered
	 */
	protected Double firstColumnPx = FIRST_COLUMN_PX_EDEFAULT;

	/**
	 * The default value of the '{@link #getFirstRowPx() <em>First Row Px</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFirstRowPx()
	 * @generated
	 * @ordered
	 */
	protected static final Double FIRST_ROW_PX_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFirstRowPx() <em>First Row Px</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFirstRowPx()
	 * @generated
	 * @ordered
	 */
	protected Double firstRowPx = FIRST_ROW_PX_EDEFAULT;

	/**
	 * The cached value of the '{@link #getFirstPlace() <em>First Place</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFirstPlace()
	 * @generated
	 * @ordered
	 */
	protected Place firstPlace;

	/**
	 * The default value of the '{@link #getSecondColumnPx() <em>Second Column Px</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSecondColumnPx()
	 * @generated
	 * @ordered
	 */
	protected static final Double SECOND_COLUMN_PX_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSecondColumnPx() <em>Second Column Px</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSecondColumnPx()
	 * @generated
	 * @ordered
	 */
	protected Double secondColumnPx = SECOND_COLUMN_PX_EDEFAULT;

	/**
	 * The default value of the '{@link #getSecondRowPx() <em>Second Row Px</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSecondRowPx()
	 * @generated
	 * @ordered
	 */
	protected static final Double SECOND_ROW_PX_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSecondRowPx() <em>Second Row Px</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSecondRowPx()
	 * @generated
	 * @ordered
	 */
	protected Double secondRowPx = SECOND_ROW_PX_EDEFAULT;

	/**
	 * The cached value of the '{@link #getSecondPlace() <em>Second Place</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSecondPlace()
	 * @generated
	 * @ordered
	 */
	protected Place secondPlace;

	/**
	 * The default value of the '{@link #getOpacityPercent() <em>Opacity Percent</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOpacityPercent()
	 * @generated
	 * @ordered
	 */
	protected static final Double OPACITY_PERCENT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getOpacityPercent() <em>Opacity Percent</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOpacityPercent()
	 * @generated
	 * @ordered
	 */
	protected Double opacityPercent = OPACITY_PERCENT_EDEFAULT;

	/**
	 * The default value of the '{@link #getHidden() <em>Hidden</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHidden()
	 * @generated
	 * @ordered
	 */
	protected static final Boolean HIDDEN_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getHidden() <em>Hidden</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHidden()
	 * @generated
	 * @ordered
	 */
	protected Boolean hidden = HIDDEN_EDEFAULT;

	/**
	 * The default value of the '{@link #getSource() <em>Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSource()
	 * @generated
	 * @ordered
	 */
	protected static final String SOURCE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSource() <em>Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSource()
	 * @generated
	 * @ordered
	 */
	protected String source = SOURCE_EDEFAULT;

	/**
	 * The default value of the '{@link #getDate() <em>Date</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDate()
	 * @generated
	 * @ordered
	 */
	protected static final String DATE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDate() <em>Date</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDate()
	 * @generated
	 * @ordered
	 */
	protected String date = DATE_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected BackgroundImageImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return SlopewrightPackage.Literals.BACKGROUND_IMAGE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getPath() {
		return path;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPath(String newPath) {
		String oldPath = path;
		path = newPath;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.BACKGROUND_IMAGE__PATH, oldPath, path));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSha256() {
		return sha256;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSha256(String newSha256) {
		String oldSha256 = sha256;
		sha256 = newSha256;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.BACKGROUND_IMAGE__SHA256, oldSha256, sha256));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getFirstColumnPx() {
		return firstColumnPx;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFirstColumnPx(Double newFirstColumnPx) {
		Double oldFirstColumnPx = firstColumnPx;
		firstColumnPx = newFirstColumnPx;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.BACKGROUND_IMAGE__FIRST_COLUMN_PX, oldFirstColumnPx, firstColumnPx));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getFirstRowPx() {
		return firstRowPx;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFirstRowPx(Double newFirstRowPx) {
		Double oldFirstRowPx = firstRowPx;
		firstRowPx = newFirstRowPx;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.BACKGROUND_IMAGE__FIRST_ROW_PX, oldFirstRowPx, firstRowPx));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Place getFirstPlace() {
		return firstPlace;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetFirstPlace(Place newFirstPlace, NotificationChain msgs) {
		Place oldFirstPlace = firstPlace;
		firstPlace = newFirstPlace;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, SlopewrightPackage.BACKGROUND_IMAGE__FIRST_PLACE, oldFirstPlace, newFirstPlace);
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
	public void setFirstPlace(Place newFirstPlace) {
		if (newFirstPlace != firstPlace) {
			NotificationChain msgs = null;
			if (firstPlace != null)
				msgs = ((InternalEObject)firstPlace).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - SlopewrightPackage.BACKGROUND_IMAGE__FIRST_PLACE, null, msgs);
			if (newFirstPlace != null)
				msgs = ((InternalEObject)newFirstPlace).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - SlopewrightPackage.BACKGROUND_IMAGE__FIRST_PLACE, null, msgs);
			msgs = basicSetFirstPlace(newFirstPlace, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.BACKGROUND_IMAGE__FIRST_PLACE, newFirstPlace, newFirstPlace));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getSecondColumnPx() {
		return secondColumnPx;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSecondColumnPx(Double newSecondColumnPx) {
		Double oldSecondColumnPx = secondColumnPx;
		secondColumnPx = newSecondColumnPx;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.BACKGROUND_IMAGE__SECOND_COLUMN_PX, oldSecondColumnPx, secondColumnPx));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getSecondRowPx() {
		return secondRowPx;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSecondRowPx(Double newSecondRowPx) {
		Double oldSecondRowPx = secondRowPx;
		secondRowPx = newSecondRowPx;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.BACKGROUND_IMAGE__SECOND_ROW_PX, oldSecondRowPx, secondRowPx));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Place getSecondPlace() {
		return secondPlace;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetSecondPlace(Place newSecondPlace, NotificationChain msgs) {
		Place oldSecondPlace = secondPlace;
		secondPlace = newSecondPlace;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, SlopewrightPackage.BACKGROUND_IMAGE__SECOND_PLACE, oldSecondPlace, newSecondPlace);
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
	public void setSecondPlace(Place newSecondPlace) {
		if (newSecondPlace != secondPlace) {
			NotificationChain msgs = null;
			if (secondPlace != null)
				msgs = ((InternalEObject)secondPlace).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - SlopewrightPackage.BACKGROUND_IMAGE__SECOND_PLACE, null, msgs);
			if (newSecondPlace != null)
				msgs = ((InternalEObject)newSecondPlace).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - SlopewrightPackage.BACKGROUND_IMAGE__SECOND_PLACE, null, msgs);
			msgs = basicSetSecondPlace(newSecondPlace, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.BACKGROUND_IMAGE__SECOND_PLACE, newSecondPlace, newSecondPlace));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getOpacityPercent() {
		return opacityPercent;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOpacityPercent(Double newOpacityPercent) {
		Double oldOpacityPercent = opacityPercent;
		opacityPercent = newOpacityPercent;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.BACKGROUND_IMAGE__OPACITY_PERCENT, oldOpacityPercent, opacityPercent));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Boolean getHidden() {
		return hidden;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHidden(Boolean newHidden) {
		Boolean oldHidden = hidden;
		hidden = newHidden;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.BACKGROUND_IMAGE__HIDDEN, oldHidden, hidden));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSource() {
		return source;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSource(String newSource) {
		String oldSource = source;
		source = newSource;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.BACKGROUND_IMAGE__SOURCE, oldSource, source));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getDate() {
		return date;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDate(String newDate) {
		String oldDate = date;
		date = newDate;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.BACKGROUND_IMAGE__DATE, oldDate, date));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case SlopewrightPackage.BACKGROUND_IMAGE__FIRST_PLACE:
				return basicSetFirstPlace(null, msgs);
			case SlopewrightPackage.BACKGROUND_IMAGE__SECOND_PLACE:
				return basicSetSecondPlace(null, msgs);
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
			case SlopewrightPackage.BACKGROUND_IMAGE__PATH:
				return getPath();
			case SlopewrightPackage.BACKGROUND_IMAGE__SHA256:
				return getSha256();
			case SlopewrightPackage.BACKGROUND_IMAGE__FIRST_COLUMN_PX:
				return getFirstColumnPx();
			case SlopewrightPackage.BACKGROUND_IMAGE__FIRST_ROW_PX:
				return getFirstRowPx();
			case SlopewrightPackage.BACKGROUND_IMAGE__FIRST_PLACE:
				return getFirstPlace();
			case SlopewrightPackage.BACKGROUND_IMAGE__SECOND_COLUMN_PX:
				return getSecondColumnPx();
			case SlopewrightPackage.BACKGROUND_IMAGE__SECOND_ROW_PX:
				return getSecondRowPx();
			case SlopewrightPackage.BACKGROUND_IMAGE__SECOND_PLACE:
				return getSecondPlace();
			case SlopewrightPackage.BACKGROUND_IMAGE__OPACITY_PERCENT:
				return getOpacityPercent();
			case SlopewrightPackage.BACKGROUND_IMAGE__HIDDEN:
				return getHidden();
			case SlopewrightPackage.BACKGROUND_IMAGE__SOURCE:
				return getSource();
			case SlopewrightPackage.BACKGROUND_IMAGE__DATE:
				return getDate();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case SlopewrightPackage.BACKGROUND_IMAGE__PATH:
				setPath((String)newValue);
				return;
			case SlopewrightPackage.BACKGROUND_IMAGE__SHA256:
				setSha256((String)newValue);
				return;
			case SlopewrightPackage.BACKGROUND_IMAGE__FIRST_COLUMN_PX:
				setFirstColumnPx((Double)newValue);
				return;
			case SlopewrightPackage.BACKGROUND_IMAGE__FIRST_ROW_PX:
				setFirstRowPx((Double)newValue);
				return;
			case SlopewrightPackage.BACKGROUND_IMAGE__FIRST_PLACE:
				setFirstPlace((Place)newValue);
				return;
			case SlopewrightPackage.BACKGROUND_IMAGE__SECOND_COLUMN_PX:
				setSecondColumnPx((Double)newValue);
				return;
			case SlopewrightPackage.BACKGROUND_IMAGE__SECOND_ROW_PX:
				setSecondRowPx((Double)newValue);
				return;
			case SlopewrightPackage.BACKGROUND_IMAGE__SECOND_PLACE:
				setSecondPlace((Place)newValue);
				return;
			case SlopewrightPackage.BACKGROUND_IMAGE__OPACITY_PERCENT:
				setOpacityPercent((Double)newValue);
				return;
			case SlopewrightPackage.BACKGROUND_IMAGE__HIDDEN:
				setHidden((Boolean)newValue);
				return;
			case SlopewrightPackage.BACKGROUND_IMAGE__SOURCE:
				setSource((String)newValue);
				return;
			case SlopewrightPackage.BACKGROUND_IMAGE__DATE:
				setDate((String)newValue);
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
			case SlopewrightPackage.BACKGROUND_IMAGE__PATH:
				setPath(PATH_EDEFAULT);
				return;
			case SlopewrightPackage.BACKGROUND_IMAGE__SHA256:
				setSha256(SHA256_EDEFAULT);
				return;
			case SlopewrightPackage.BACKGROUND_IMAGE__FIRST_COLUMN_PX:
				setFirstColumnPx(FIRST_COLUMN_PX_EDEFAULT);
				return;
			case SlopewrightPackage.BACKGROUND_IMAGE__FIRST_ROW_PX:
				setFirstRowPx(FIRST_ROW_PX_EDEFAULT);
				return;
			case SlopewrightPackage.BACKGROUND_IMAGE__FIRST_PLACE:
				setFirstPlace((Place)null);
				return;
			case SlopewrightPackage.BACKGROUND_IMAGE__SECOND_COLUMN_PX:
				setSecondColumnPx(SECOND_COLUMN_PX_EDEFAULT);
				return;
			case SlopewrightPackage.BACKGROUND_IMAGE__SECOND_ROW_PX:
				setSecondRowPx(SECOND_ROW_PX_EDEFAULT);
				return;
			case SlopewrightPackage.BACKGROUND_IMAGE__SECOND_PLACE:
				setSecondPlace((Place)null);
				return;
			case SlopewrightPackage.BACKGROUND_IMAGE__OPACITY_PERCENT:
				setOpacityPercent(OPACITY_PERCENT_EDEFAULT);
				return;
			case SlopewrightPackage.BACKGROUND_IMAGE__HIDDEN:
				setHidden(HIDDEN_EDEFAULT);
				return;
			case SlopewrightPackage.BACKGROUND_IMAGE__SOURCE:
				setSource(SOURCE_EDEFAULT);
				return;
			case SlopewrightPackage.BACKGROUND_IMAGE__DATE:
				setDate(DATE_EDEFAULT);
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
			case SlopewrightPackage.BACKGROUND_IMAGE__PATH:
				return PATH_EDEFAULT == null ? path != null : !PATH_EDEFAULT.equals(path);
			case SlopewrightPackage.BACKGROUND_IMAGE__SHA256:
				return SHA256_EDEFAULT == null ? sha256 != null : !SHA256_EDEFAULT.equals(sha256);
			case SlopewrightPackage.BACKGROUND_IMAGE__FIRST_COLUMN_PX:
				return FIRST_COLUMN_PX_EDEFAULT == null ? firstColumnPx != null : !FIRST_COLUMN_PX_EDEFAULT.equals(firstColumnPx);
			case SlopewrightPackage.BACKGROUND_IMAGE__FIRST_ROW_PX:
				return FIRST_ROW_PX_EDEFAULT == null ? firstRowPx != null : !FIRST_ROW_PX_EDEFAULT.equals(firstRowPx);
			case SlopewrightPackage.BACKGROUND_IMAGE__FIRST_PLACE:
				return firstPlace != null;
			case SlopewrightPackage.BACKGROUND_IMAGE__SECOND_COLUMN_PX:
				return SECOND_COLUMN_PX_EDEFAULT == null ? secondColumnPx != null : !SECOND_COLUMN_PX_EDEFAULT.equals(secondColumnPx);
			case SlopewrightPackage.BACKGROUND_IMAGE__SECOND_ROW_PX:
				return SECOND_ROW_PX_EDEFAULT == null ? secondRowPx != null : !SECOND_ROW_PX_EDEFAULT.equals(secondRowPx);
			case SlopewrightPackage.BACKGROUND_IMAGE__SECOND_PLACE:
				return secondPlace != null;
			case SlopewrightPackage.BACKGROUND_IMAGE__OPACITY_PERCENT:
				return OPACITY_PERCENT_EDEFAULT == null ? opacityPercent != null : !OPACITY_PERCENT_EDEFAULT.equals(opacityPercent);
			case SlopewrightPackage.BACKGROUND_IMAGE__HIDDEN:
				return HIDDEN_EDEFAULT == null ? hidden != null : !HIDDEN_EDEFAULT.equals(hidden);
			case SlopewrightPackage.BACKGROUND_IMAGE__SOURCE:
				return SOURCE_EDEFAULT == null ? source != null : !SOURCE_EDEFAULT.equals(source);
			case SlopewrightPackage.BACKGROUND_IMAGE__DATE:
				return DATE_EDEFAULT == null ? date != null : !DATE_EDEFAULT.equals(date);
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
		result.append(" (path: ");
		result.append(path);
		result.append(", sha256: ");
		result.append(sha256);
		result.append(", firstColumnPx: ");
		result.append(firstColumnPx);
		result.append(", firstRowPx: ");
		result.append(firstRowPx);
		result.append(", secondColumnPx: ");
		result.append(secondColumnPx);
		result.append(", secondRowPx: ");
		result.append(secondRowPx);
		result.append(", opacityPercent: ");
		result.append(opacityPercent);
		result.append(", hidden: ");
		result.append(hidden);
		result.append(", source: ");
		result.append(source);
		result.append(", date: ");
		result.append(date);
		result.append(')');
		return result.toString();
	}

} //BackgroundImageImpl
