/**
 */
package slopewright.model;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Helipad</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link slopewright.model.Helipad#getPlace <em>Place</em>}</li>
 *   <li>{@link slopewright.model.Helipad#getElevationM <em>Elevation M</em>}</li>
 *   <li>{@link slopewright.model.Helipad#getFatoLengthM <em>Fato Length M</em>}</li>
 *   <li>{@link slopewright.model.Helipad#getFatoWidthM <em>Fato Width M</em>}</li>
 *   <li>{@link slopewright.model.Helipad#getTlofLengthM <em>Tlof Length M</em>}</li>
 *   <li>{@link slopewright.model.Helipad#getTlofWidthM <em>Tlof Width M</em>}</li>
 *   <li>{@link slopewright.model.Helipad#getSafetyAreaWidthM <em>Safety Area Width M</em>}</li>
 *   <li>{@link slopewright.model.Helipad#getHoverHeightM <em>Hover Height M</em>}</li>
 *   <li>{@link slopewright.model.Helipad#getEyeAboveSkidsM <em>Eye Above Skids M</em>}</li>
 *   <li>{@link slopewright.model.Helipad#getFloating <em>Floating</em>}</li>
 *   <li>{@link slopewright.model.Helipad#getDirections <em>Directions</em>}</li>
 *   <li>{@link slopewright.model.Helipad#getDeckPitchDeg <em>Deck Pitch Deg</em>}</li>
 *   <li>{@link slopewright.model.Helipad#getDeckRollDeg <em>Deck Roll Deg</em>}</li>
 *   <li>{@link slopewright.model.Helipad#getDeckHeadingDeg <em>Deck Heading Deg</em>}</li>
 *   <li>{@link slopewright.model.Helipad#getFatoBearingDeg <em>Fato Bearing Deg</em>}</li>
 * </ul>
 *
 * @see slopewright.model.SlopewrightPackage#getHelipad()
 * @model
 * @generated
 */
public interface Helipad extends Named {
	/**
	 * Returns the value of the '<em><b>Place</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Place</em>' containment reference.
	 * @see #setPlace(Place)
	 * @see slopewright.model.SlopewrightPackage#getHelipad_Place()
	 * @model containment="true"
	 * @generated
	 */
	Place getPlace();

	/**
	 * Sets the value of the '{@link slopewright.model.Helipad#getPlace <em>Place</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Place</em>' containment reference.
	 * @see #getPlace()
	 * @generated
	 */
	void setPlace(Place value);

	/**
	 * Returns the value of the '<em><b>Elevation M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Elevation M</em>' attribute.
	 * @see #setElevationM(Double)
	 * @see slopewright.model.SlopewrightPackage#getHelipad_ElevationM()
	 * @model
	 * @generated
	 */
	Double getElevationM();

	/**
	 * Sets the value of the '{@link slopewright.model.Helipad#getElevationM <em>Elevation M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Elevation M</em>' attribute.
	 * @see #getElevationM()
	 * @generated
	 */
	void setElevationM(Double value);

	/**
	 * Returns the value of the '<em><b>Fato Length M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Fato Length M</em>' attribute.
	 * @see #setFatoLengthM(Double)
	 * @see slopewright.model.SlopewrightPackage#getHelipad_FatoLengthM()
	 * @model
	 * @generated
	 */
	Double getFatoLengthM();

	/**
	 * Sets the value of the '{@link slopewright.model.Helipad#getFatoLengthM <em>Fato Length M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Fato Length M</em>' attribute.
	 * @see #getFatoLengthM()
	 * @generated
	 */
	void setFatoLengthM(Double value);

	/**
	 * Returns the value of the '<em><b>Fato Width M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Fato Width M</em>' attribute.
	 * @see #setFatoWidthM(Double)
	 * @see slopewright.model.SlopewrightPackage#getHelipad_FatoWidthM()
	 * @model
	 * @generated
	 */
	Double getFatoWidthM();

	/**
	 * Sets the value of the '{@link slopewright.model.Helipad#getFatoWidthM <em>Fato Width M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Fato Width M</em>' attribute.
	 * @see #getFatoWidthM()
	 * @generated
	 */
	void setFatoWidthM(Double value);

	/**
	 * Returns the value of the '<em><b>Tlof Length M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Tlof Length M</em>' attribute.
	 * @see #setTlofLengthM(Double)
	 * @see slopewright.model.SlopewrightPackage#getHelipad_TlofLengthM()
	 * @model
	 * @generated
	 */
	Double getTlofLengthM();

	/**
	 * Sets the value of the '{@link slopewright.model.Helipad#getTlofLengthM <em>Tlof Length M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Tlof Length M</em>' attribute.
	 * @see #getTlofLengthM()
	 * @generated
	 */
	void setTlofLengthM(Double value);

	/**
	 * Returns the value of the '<em><b>Tlof Width M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Tlof Width M</em>' attribute.
	 * @see #setTlofWidthM(Double)
	 * @see slopewright.model.SlopewrightPackage#getHelipad_TlofWidthM()
	 * @model
	 * @generated
	 */
	Double getTlofWidthM();

	/**
	 * Sets the value of the '{@link slopewright.model.Helipad#getTlofWidthM <em>Tlof Width M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Tlof Width M</em>' attribute.
	 * @see #getTlofWidthM()
	 * @generated
	 */
	void setTlofWidthM(Double value);

	/**
	 * Returns the value of the '<em><b>Safety Area Width M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Safety Area Width M</em>' attribute.
	 * @see #setSafetyAreaWidthM(Double)
	 * @see slopewright.model.SlopewrightPackage#getHelipad_SafetyAreaWidthM()
	 * @model
	 * @generated
	 */
	Double getSafetyAreaWidthM();

	/**
	 * Sets the value of the '{@link slopewright.model.Helipad#getSafetyAreaWidthM <em>Safety Area Width M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Safety Area Width M</em>' attribute.
	 * @see #getSafetyAreaWidthM()
	 * @generated
	 */
	void setSafetyAreaWidthM(Double value);

	/**
	 * Returns the value of the '<em><b>Hover Height M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Hover Height M</em>' attribute.
	 * @see #setHoverHeightM(Double)
	 * @see slopewright.model.SlopewrightPackage#getHelipad_HoverHeightM()
	 * @model
	 * @generated
	 */
	Double getHoverHeightM();

	/**
	 * Sets the value of the '{@link slopewright.model.Helipad#getHoverHeightM <em>Hover Height M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Hover Height M</em>' attribute.
	 * @see #getHoverHeightM()
	 * @generated
	 */
	void setHoverHeightM(Double value);

	/**
	 * Returns the value of the '<em><b>Eye Above Skids M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Eye Above Skids M</em>' attribute.
	 * @see #setEyeAboveSkidsM(Double)
	 * @see slopewright.model.SlopewrightPackage#getHelipad_EyeAboveSkidsM()
	 * @model
	 * @generated
	 */
	Double getEyeAboveSkidsM();

	/**
	 * Sets the value of the '{@link slopewright.model.Helipad#getEyeAboveSkidsM <em>Eye Above Skids M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Eye Above Skids M</em>' attribute.
	 * @see #getEyeAboveSkidsM()
	 * @generated
	 */
	void setEyeAboveSkidsM(Double value);

	/**
	 * Returns the value of the '<em><b>Floating</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Floating</em>' attribute.
	 * @see #setFloating(Boolean)
	 * @see slopewright.model.SlopewrightPackage#getHelipad_Floating()
	 * @model
	 * @generated
	 */
	Boolean getFloating();

	/**
	 * Sets the value of the '{@link slopewright.model.Helipad#getFloating <em>Floating</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Floating</em>' attribute.
	 * @see #getFloating()
	 * @generated
	 */
	void setFloating(Boolean value);

	/**
	 * Returns the value of the '<em><b>Directions</b></em>' containment reference list.
	 * The list contents are of type {@link slopewright.model.ApproachDirection}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Directions</em>' containment reference list.
	 * @see slopewright.model.SlopewrightPackage#getHelipad_Directions()
	 * @model containment="true"
	 * @generated
	 */
	EList<ApproachDirection> getDirections();

	/**
	 * Returns the value of the '<em><b>Deck Pitch Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Deck Pitch Deg</em>' attribute.
	 * @see #setDeckPitchDeg(Double)
	 * @see slopewright.model.SlopewrightPackage#getHelipad_DeckPitchDeg()
	 * @model
	 * @generated
	 */
	Double getDeckPitchDeg();

	/**
	 * Sets the value of the '{@link slopewright.model.Helipad#getDeckPitchDeg <em>Deck Pitch Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Deck Pitch Deg</em>' attribute.
	 * @see #getDeckPitchDeg()
	 * @generated
	 */
	void setDeckPitchDeg(Double value);

	/**
	 * Returns the value of the '<em><b>Deck Roll Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Deck Roll Deg</em>' attribute.
	 * @see #setDeckRollDeg(Double)
	 * @see slopewright.model.SlopewrightPackage#getHelipad_DeckRollDeg()
	 * @model
	 * @generated
	 */
	Double getDeckRollDeg();

	/**
	 * Sets the value of the '{@link slopewright.model.Helipad#getDeckRollDeg <em>Deck Roll Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Deck Roll Deg</em>' attribute.
	 * @see #getDeckRollDeg()
	 * @generated
	 */
	void setDeckRollDeg(Double value);

	/**
	 * Returns the value of the '<em><b>Deck Heading Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Deck Heading Deg</em>' attribute.
	 * @see #setDeckHeadingDeg(Double)
	 * @see slopewright.model.SlopewrightPackage#getHelipad_DeckHeadingDeg()
	 * @model
	 * @generated
	 */
	Double getDeckHeadingDeg();

	/**
	 * Sets the value of the '{@link slopewright.model.Helipad#getDeckHeadingDeg <em>Deck Heading Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Deck Heading Deg</em>' attribute.
	 * @see #getDeckHeadingDeg()
	 * @generated
	 */
	void setDeckHeadingDeg(Double value);

	/**
	 * Returns the value of the '<em><b>Fato Bearing Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Fato Bearing Deg</em>' attribute.
	 * @see #setFatoBearingDeg(Double)
	 * @see slopewright.model.SlopewrightPackage#getHelipad_FatoBearingDeg()
	 * @model
	 * @generated
	 */
	Double getFatoBearingDeg();

	/**
	 * Sets the value of the '{@link slopewright.model.Helipad#getFatoBearingDeg <em>Fato Bearing Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Fato Bearing Deg</em>' attribute.
	 * @see #getFatoBearingDeg()
	 * @generated
	 */
	void setFatoBearingDeg(Double value);

} // Helipad
