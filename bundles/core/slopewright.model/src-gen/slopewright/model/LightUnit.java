/**
 */
package slopewright.model;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Light Unit</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link slopewright.model.LightUnit#getLabel <em>Label</em>}</li>
 *   <li>{@link slopewright.model.LightUnit#getBar <em>Bar</em>}</li>
 *   <li>{@link slopewright.model.LightUnit#getAlongM <em>Along M</em>}</li>
 *   <li>{@link slopewright.model.LightUnit#getRightM <em>Right M</em>}</li>
 *   <li>{@link slopewright.model.LightUnit#getLensElevationM <em>Lens Elevation M</em>}</li>
 *   <li>{@link slopewright.model.LightUnit#getAzimuthOffsetDeg <em>Azimuth Offset Deg</em>}</li>
 *   <li>{@link slopewright.model.LightUnit#getSettingDeg <em>Setting Deg</em>}</li>
 *   <li>{@link slopewright.model.LightUnit#getHeightAboveGroundM <em>Height Above Ground M</em>}</li>
 *   <li>{@link slopewright.model.LightUnit#getFrangible <em>Frangible</em>}</li>
 *   <li>{@link slopewright.model.LightUnit#getTransitions <em>Transitions</em>}</li>
 *   <li>{@link slopewright.model.LightUnit#getMeasured <em>Measured</em>}</li>
 *   <li>{@link slopewright.model.LightUnit#getLampsOut <em>Lamps Out</em>}</li>
 * </ul>
 *
 * @see slopewright.model.SlopewrightPackage#getLightUnit()
 * @model
 * @generated
 */
public interface LightUnit extends Identified {
	/**
	 * Returns the value of the '<em><b>Label</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Label</em>' attribute.
	 * @see #setLabel(String)
	 * @see slopewright.model.SlopewrightPackage#getLightUnit_Label()
	 * @model
	 * @generated
	 */
	String getLabel();

	/**
	 * Sets the value of the '{@link slopewright.model.LightUnit#getLabel <em>Label</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Label</em>' attribute.
	 * @see #getLabel()
	 * @generated
	 */
	void setLabel(String value);

	/**
	 * Returns the value of the '<em><b>Bar</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Bar</em>' attribute.
	 * @see #setBar(Integer)
	 * @see slopewright.model.SlopewrightPackage#getLightUnit_Bar()
	 * @model
	 * @generated
	 */
	Integer getBar();

	/**
	 * Sets the value of the '{@link slopewright.model.LightUnit#getBar <em>Bar</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Bar</em>' attribute.
	 * @see #getBar()
	 * @generated
	 */
	void setBar(Integer value);

	/**
	 * Returns the value of the '<em><b>Along M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Along M</em>' attribute.
	 * @see #setAlongM(Double)
	 * @see slopewright.model.SlopewrightPackage#getLightUnit_AlongM()
	 * @model
	 * @generated
	 */
	Double getAlongM();

	/**
	 * Sets the value of the '{@link slopewright.model.LightUnit#getAlongM <em>Along M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Along M</em>' attribute.
	 * @see #getAlongM()
	 * @generated
	 */
	void setAlongM(Double value);

	/**
	 * Returns the value of the '<em><b>Right M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Right M</em>' attribute.
	 * @see #setRightM(Double)
	 * @see slopewright.model.SlopewrightPackage#getLightUnit_RightM()
	 * @model
	 * @generated
	 */
	Double getRightM();

	/**
	 * Sets the value of the '{@link slopewright.model.LightUnit#getRightM <em>Right M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Right M</em>' attribute.
	 * @see #getRightM()
	 * @generated
	 */
	void setRightM(Double value);

	/**
	 * Returns the value of the '<em><b>Lens Elevation M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Lens Elevation M</em>' attribute.
	 * @see #setLensElevationM(Double)
	 * @see slopewright.model.SlopewrightPackage#getLightUnit_LensElevationM()
	 * @model
	 * @generated
	 */
	Double getLensElevationM();

	/**
	 * Sets the value of the '{@link slopewright.model.LightUnit#getLensElevationM <em>Lens Elevation M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Lens Elevation M</em>' attribute.
	 * @see #getLensElevationM()
	 * @generated
	 */
	void setLensElevationM(Double value);

	/**
	 * Returns the value of the '<em><b>Azimuth Offset Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Azimuth Offset Deg</em>' attribute.
	 * @see #setAzimuthOffsetDeg(Double)
	 * @see slopewright.model.SlopewrightPackage#getLightUnit_AzimuthOffsetDeg()
	 * @model
	 * @generated
	 */
	Double getAzimuthOffsetDeg();

	/**
	 * Sets the value of the '{@link slopewright.model.LightUnit#getAzimuthOffsetDeg <em>Azimuth Offset Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Azimuth Offset Deg</em>' attribute.
	 * @see #getAzimuthOffsetDeg()
	 * @generated
	 */
	void setAzimuthOffsetDeg(Double value);

	/**
	 * Returns the value of the '<em><b>Setting Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Setting Deg</em>' attribute.
	 * @see #setSettingDeg(Double)
	 * @see slopewright.model.SlopewrightPackage#getLightUnit_SettingDeg()
	 * @model
	 * @generated
	 */
	Double getSettingDeg();

	/**
	 * Sets the value of the '{@link slopewright.model.LightUnit#getSettingDeg <em>Setting Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Setting Deg</em>' attribute.
	 * @see #getSettingDeg()
	 * @generated
	 */
	void setSettingDeg(Double value);

	/**
	 * Returns the value of the '<em><b>Height Above Ground M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Height Above Ground M</em>' attribute.
	 * @see #setHeightAboveGroundM(Double)
	 * @see slopewright.model.SlopewrightPackage#getLightUnit_HeightAboveGroundM()
	 * @model
	 * @generated
	 */
	Double getHeightAboveGroundM();

	/**
	 * Sets the value of the '{@link slopewright.model.LightUnit#getHeightAboveGroundM <em>Height Above Ground M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Height Above Ground M</em>' attribute.
	 * @see #getHeightAboveGroundM()
	 * @generated
	 */
	void setHeightAboveGroundM(Double value);

	/**
	 * Returns the value of the '<em><b>Frangible</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Frangible</em>' attribute.
	 * @see #setFrangible(Boolean)
	 * @see slopewright.model.SlopewrightPackage#getLightUnit_Frangible()
	 * @model
	 * @generated
	 */
	Boolean getFrangible();

	/**
	 * Sets the value of the '{@link slopewright.model.LightUnit#getFrangible <em>Frangible</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Frangible</em>' attribute.
	 * @see #getFrangible()
	 * @generated
	 */
	void setFrangible(Boolean value);

	/**
	 * Returns the value of the '<em><b>Transitions</b></em>' containment reference list.
	 * The list contents are of type {@link slopewright.model.Transition}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Transitions</em>' containment reference list.
	 * @see slopewright.model.SlopewrightPackage#getLightUnit_Transitions()
	 * @model containment="true"
	 * @generated
	 */
	EList<Transition> getTransitions();

	/**
	 * Returns the value of the '<em><b>Measured</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Measured</em>' containment reference.
	 * @see #setMeasured(MeasuredUnit)
	 * @see slopewright.model.SlopewrightPackage#getLightUnit_Measured()
	 * @model containment="true"
	 * @generated
	 */
	MeasuredUnit getMeasured();

	/**
	 * Sets the value of the '{@link slopewright.model.LightUnit#getMeasured <em>Measured</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Measured</em>' containment reference.
	 * @see #getMeasured()
	 * @generated
	 */
	void setMeasured(MeasuredUnit value);

	/**
	 * Returns the value of the '<em><b>Lamps Out</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Lamps Out</em>' attribute.
	 * @see #setLampsOut(Integer)
	 * @see slopewright.model.SlopewrightPackage#getLightUnit_LampsOut()
	 * @model
	 * @generated
	 */
	Integer getLampsOut();

	/**
	 * Sets the value of the '{@link slopewright.model.LightUnit#getLampsOut <em>Lamps Out</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Lamps Out</em>' attribute.
	 * @see #getLampsOut()
	 * @generated
	 */
	void setLampsOut(Integer value);

} // LightUnit
