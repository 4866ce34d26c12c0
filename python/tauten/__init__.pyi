from typing import Any, Iterable, Optional, overload, Sequence, TypeVar, Union

from tauten import uncertainty as uncertainty
from tauten._core import AfterRelease as AfterRelease
from tauten._core import AidUse as AidUse
from tauten._core import Arg as Arg
from tauten._core import Band as Band
from tauten._core import Capacity as Capacity
from tauten._core import Budget as Budget
from tauten._core import ChainEnd as ChainEnd
from tauten._core import Chances as Chances
from tauten._core import Clamp as Clamp
from tauten._core import ClampCandidate as ClampCandidate
from tauten._core import ClassMark as ClassMark
from tauten._core import Contribution as Contribution
from tauten._core import CoverageInterval as CoverageInterval
from tauten._core import Curve as Curve
from tauten._core import CurvePoint as CurvePoint
from tauten._core import CurveZone as CurveZone
from tauten._core import Derivation as Derivation
from tauten._core import Figure as Figure
from tauten._core import Free as Free
from tauten._core import Identification as Identification
from tauten._core import Identified as Identified
from tauten._core import Learned as Learned
from tauten._core import LoadDiagram as LoadDiagram
from tauten._core import LoadPoint as LoadPoint
from tauten._core import Lognormal as Lognormal
from tauten._core import MethodBand as MethodBand
from tauten._core import MonteCarlo as MonteCarlo
from tauten._core import Notice as Notice
from tauten._core import NutRotation as NutRotation
from tauten._core import PlanStep as PlanStep
from tauten._core import PropertyClass as PropertyClass
from tauten._core import Range as Range
from tauten._core import Reach as Reach
from tauten._core import ResidualClamp as ResidualClamp
from tauten._core import Sobol as Sobol
from tauten._core import SobolIndex as SobolIndex
from tauten._core import Source as Source
from tauten._core import Step as Step
from tauten._core import StructuralTurn as StructuralTurn
from tauten._core import Style as Style
from tauten._core import Thread as Thread
from tauten._core import ThreadCondition as ThreadCondition
from tauten._core import TighteningCurve as TighteningCurve
from tauten._core import TorqueContribution as TorqueContribution
from tauten._core import Turn as Turn
from tauten._core import TurnJoint as TurnJoint
from tauten._core import TurnLayer as TurnLayer
from tauten._core import TurningEnergy as TurningEnergy
from tauten._errors import DomainWarning as DomainWarning
from tauten._errors import Error as Error
from tauten._errors import ValidityWarning as ValidityWarning
from tauten._explanation import Explanation as Explanation
from tauten._formula import Check as Check
from tauten._formula import Formula as Formula
from tauten._formula import Formulas as Formulas

formulas: Formulas

# A DataFrame, structured array or dict of columns: the answer is one of the same kind.
Table = TypeVar("Table")

# One number in SI, text with its unit, or a quantity of Pint.
Quantity = Union[float, str, Any]
Friction = Union[float, str, Iterable[float], Band]

conditions: tuple[str, ...]

def quantity(text: str) -> float: ...
def thread(designation: Union[str, Thread]) -> Thread: ...
def property_class(name: Union[str, PropertyClass], diameter: Optional[Quantity] = ...) -> PropertyClass: ...
def thread_condition(key: Union[str, ThreadCondition]) -> ThreadCondition: ...
def identify(
    *,
    socket: Optional[Quantity] = ...,
    key: Optional[Quantity] = ...,
    bit: Optional[int] = ...,
    worn: Optional[Quantity] = ...,
    property_class: Optional[str] = ...,
) -> Identification: ...
@overload
def clamp(
    *,
    torque: Quantity,
    socket: Optional[Quantity] = ...,
    key: Optional[Quantity] = ...,
    thread: Optional[Union[str, Thread]] = ...,
    head: Optional[str] = ...,
    property_class: Optional[Union[str, PropertyClass]] = ...,
    condition: Optional[str] = ...,
    face_condition: Optional[str] = ...,
    specified_condition: Optional[str] = ...,
    thread_friction: Optional[Friction] = ...,
    bearing_friction: Optional[Friction] = ...,
    share: Optional[Quantity] = ...,
    wrench_accuracy: Optional[Quantity] = ...,
    prevailing_torque: Optional[Quantity] = ...,
    shank_torque: Optional[Quantity] = ...,
    bearing_diameter: Optional[Quantity] = ...,
    more_faces: Optional[Sequence[Any]] = ...,
    torsion: Optional[str] = ...,
    name: Optional[str] = ...,
) -> Clamp: ...
@overload
def clamp(
    table: Table,
    /,
    *,
    torque: Optional[Quantity] = ...,
    socket: Optional[Quantity] = ...,
    key: Optional[Quantity] = ...,
    thread: Optional[Union[str, Thread]] = ...,
    head: Optional[str] = ...,
    property_class: Optional[Union[str, PropertyClass]] = ...,
    condition: Optional[str] = ...,
    face_condition: Optional[str] = ...,
    specified_condition: Optional[str] = ...,
    thread_friction: Optional[Friction] = ...,
    bearing_friction: Optional[Friction] = ...,
    share: Optional[Quantity] = ...,
    wrench_accuracy: Optional[Quantity] = ...,
    prevailing_torque: Optional[Quantity] = ...,
    shank_torque: Optional[Quantity] = ...,
    bearing_diameter: Optional[Quantity] = ...,
    more_faces: Optional[Sequence[Any]] = ...,
    torsion: Optional[str] = ...,
    name: Optional[str] = ...,
    columns: Optional[Sequence[str]] = ...,
    threads: Optional[int] = ...,
) -> Table: ...
@overload
def torque_for(
    *,
    socket: Optional[Quantity] = ...,
    key: Optional[Quantity] = ...,
    thread: Optional[Union[str, Thread]] = ...,
    head: Optional[str] = ...,
    property_class: Optional[Union[str, PropertyClass]] = ...,
    clamp_load: Optional[Quantity] = ...,
    share: Optional[Quantity] = ...,
    condition: Optional[str] = ...,
    face_condition: Optional[str] = ...,
    thread_friction: Optional[Friction] = ...,
    bearing_friction: Optional[Friction] = ...,
    wrench_accuracy: Optional[Quantity] = ...,
    prevailing_torque: Optional[Quantity] = ...,
    shank_torque: Optional[Quantity] = ...,
    bearing_diameter: Optional[Quantity] = ...,
    more_faces: Optional[Sequence[Any]] = ...,
    torsion: Optional[str] = ...,
    name: Optional[str] = ...,
) -> Clamp: ...
@overload
def torque_for(
    table: Table,
    /,
    *,
    socket: Optional[Quantity] = ...,
    key: Optional[Quantity] = ...,
    thread: Optional[Union[str, Thread]] = ...,
    head: Optional[str] = ...,
    property_class: Optional[Union[str, PropertyClass]] = ...,
    clamp_load: Optional[Quantity] = ...,
    share: Optional[Quantity] = ...,
    condition: Optional[str] = ...,
    face_condition: Optional[str] = ...,
    thread_friction: Optional[Friction] = ...,
    bearing_friction: Optional[Friction] = ...,
    wrench_accuracy: Optional[Quantity] = ...,
    prevailing_torque: Optional[Quantity] = ...,
    shank_torque: Optional[Quantity] = ...,
    bearing_diameter: Optional[Quantity] = ...,
    more_faces: Optional[Sequence[Any]] = ...,
    torsion: Optional[str] = ...,
    name: Optional[str] = ...,
    columns: Optional[Sequence[str]] = ...,
    threads: Optional[int] = ...,
) -> Table: ...
@overload
def turn(
    *,
    thread: Optional[Union[str, Thread]] = ...,
    property_class: Optional[Union[str, PropertyClass]] = ...,
    angle: Optional[Quantity] = ...,
    angle_at_handle: Optional[bool] = ...,
    clamp_load: Optional[Quantity] = ...,
    share: Optional[Quantity] = ...,
    utilisation: Optional[Quantity] = ...,
    snug_torque: Optional[Quantity] = ...,
    layers: Optional[Sequence[Any]] = ...,
    grip: Optional[Quantity] = ...,
    washers: Optional[int] = ...,
    kind: Optional[str] = ...,
    head: Optional[str] = ...,
    length: Optional[Quantity] = ...,
    shank_diameter: Optional[Quantity] = ...,
    tapped_material: Optional[str] = ...,
    plate_model: Optional[str] = ...,
    condition: Optional[str] = ...,
    face_condition: Optional[str] = ...,
    thread_friction: Optional[Friction] = ...,
    bearing_friction: Optional[Friction] = ...,
    prevailing_torque: Optional[Quantity] = ...,
    bearing_diameter: Optional[Quantity] = ...,
    bars: Optional[Sequence[Any]] = ...,
    wrench_accuracy: Optional[Quantity] = ...,
    angle_tolerance: Optional[Quantity] = ...,
    resilience_tolerance: Optional[Quantity] = ...,
    strength_surplus: Optional[Quantity] = ...,
    roughness: Optional[Quantity] = ...,
    load_across: Optional[bool] = ...,
    bolt_warming: Optional[Quantity] = ...,
    plate_warming: Optional[Quantity] = ...,
    creep_share: Optional[Quantity] = ...,
    neighbours: Optional[Quantity] = ...,
    working_load: Optional[Quantity] = ...,
    load_introduction: Optional[Quantity] = ...,
    structural: Optional[bool] = ...,
    sloping_faces: Optional[int] = ...,
    name: Optional[str] = ...,
) -> Turn: ...
@overload
def turn(
    table: Table,
    /,
    *,
    thread: Optional[Union[str, Thread]] = ...,
    property_class: Optional[Union[str, PropertyClass]] = ...,
    angle: Optional[Quantity] = ...,
    angle_at_handle: Optional[bool] = ...,
    clamp_load: Optional[Quantity] = ...,
    share: Optional[Quantity] = ...,
    utilisation: Optional[Quantity] = ...,
    snug_torque: Optional[Quantity] = ...,
    layers: Optional[Sequence[Any]] = ...,
    grip: Optional[Quantity] = ...,
    washers: Optional[int] = ...,
    kind: Optional[str] = ...,
    head: Optional[str] = ...,
    length: Optional[Quantity] = ...,
    shank_diameter: Optional[Quantity] = ...,
    tapped_material: Optional[str] = ...,
    plate_model: Optional[str] = ...,
    condition: Optional[str] = ...,
    face_condition: Optional[str] = ...,
    thread_friction: Optional[Friction] = ...,
    bearing_friction: Optional[Friction] = ...,
    prevailing_torque: Optional[Quantity] = ...,
    bearing_diameter: Optional[Quantity] = ...,
    bars: Optional[Sequence[Any]] = ...,
    wrench_accuracy: Optional[Quantity] = ...,
    angle_tolerance: Optional[Quantity] = ...,
    resilience_tolerance: Optional[Quantity] = ...,
    strength_surplus: Optional[Quantity] = ...,
    roughness: Optional[Quantity] = ...,
    load_across: Optional[bool] = ...,
    bolt_warming: Optional[Quantity] = ...,
    plate_warming: Optional[Quantity] = ...,
    creep_share: Optional[Quantity] = ...,
    neighbours: Optional[Quantity] = ...,
    working_load: Optional[Quantity] = ...,
    load_introduction: Optional[Quantity] = ...,
    structural: Optional[bool] = ...,
    sloping_faces: Optional[int] = ...,
    name: Optional[str] = ...,
    columns: Optional[Sequence[str]] = ...,
    threads: Optional[int] = ...,
) -> Table: ...
def curve(
    *,
    thread: Optional[Union[str, Thread]] = ...,
    property_class: Optional[Union[str, PropertyClass]] = ...,
    layers: Optional[Sequence[Any]] = ...,
    grip: Optional[Quantity] = ...,
    washers: Optional[int] = ...,
    kind: Optional[str] = ...,
    head: Optional[str] = ...,
    length: Optional[Quantity] = ...,
    shank_diameter: Optional[Quantity] = ...,
    tapped_material: Optional[str] = ...,
    plate_model: Optional[str] = ...,
    snug_torque: Optional[Quantity] = ...,
    condition: Optional[str] = ...,
    face_condition: Optional[str] = ...,
    thread_friction: Optional[Friction] = ...,
    bearing_friction: Optional[Friction] = ...,
    prevailing_torque: Optional[Quantity] = ...,
    bearing_diameter: Optional[Quantity] = ...,
    end_angle: Optional[Quantity] = ...,
    points: Optional[int] = ...,
    slope_share: Optional[Quantity] = ...,
    name: Optional[str] = ...,
) -> TighteningCurve: ...
@overload
def reach(
    *,
    torque: Optional[Quantity] = ...,
    setting: Optional[Quantity] = ...,
    wrench_length: Optional[Quantity] = ...,
    extensions: Optional[Sequence[Any]] = ...,
    hand_offset: Optional[Quantity] = ...,
    support_share: Optional[Quantity] = ...,
    tilt: Optional[Quantity] = ...,
    universal_joint: Optional[Quantity] = ...,
    multiplier_ratio: Optional[Quantity] = ...,
    multiplier_efficiency: Optional[Quantity] = ...,
    efficiency_range: Optional[Quantity] = ...,
    reaction_arm: Optional[Quantity] = ...,
    bars: Optional[Sequence[Any]] = ...,
    smallest_drive: Optional[Quantity] = ...,
    wrench_type: Optional[str] = ...,
    wrench_class: Optional[str] = ...,
    scale_low: Optional[Quantity] = ...,
    scale_high: Optional[Quantity] = ...,
    division: Optional[Quantity] = ...,
    hinged_handle: Optional[bool] = ...,
    pipe_on_handle: Optional[bool] = ...,
    tolerance_hand: Optional[Quantity] = ...,
    tolerance_extension: Optional[Quantity] = ...,
    tolerance_extension_angle: Optional[Quantity] = ...,
    tolerance_pull_angle: Optional[Quantity] = ...,
    tolerance_support_share: Optional[Quantity] = ...,
    tolerance_operator: Optional[Quantity] = ...,
) -> Reach: ...
@overload
def reach(
    table: Table,
    /,
    *,
    torque: Optional[Quantity] = ...,
    setting: Optional[Quantity] = ...,
    wrench_length: Optional[Quantity] = ...,
    extensions: Optional[Sequence[Any]] = ...,
    hand_offset: Optional[Quantity] = ...,
    support_share: Optional[Quantity] = ...,
    tilt: Optional[Quantity] = ...,
    universal_joint: Optional[Quantity] = ...,
    multiplier_ratio: Optional[Quantity] = ...,
    multiplier_efficiency: Optional[Quantity] = ...,
    efficiency_range: Optional[Quantity] = ...,
    reaction_arm: Optional[Quantity] = ...,
    bars: Optional[Sequence[Any]] = ...,
    smallest_drive: Optional[Quantity] = ...,
    wrench_type: Optional[str] = ...,
    wrench_class: Optional[str] = ...,
    scale_low: Optional[Quantity] = ...,
    scale_high: Optional[Quantity] = ...,
    division: Optional[Quantity] = ...,
    hinged_handle: Optional[bool] = ...,
    pipe_on_handle: Optional[bool] = ...,
    tolerance_hand: Optional[Quantity] = ...,
    tolerance_extension: Optional[Quantity] = ...,
    tolerance_extension_angle: Optional[Quantity] = ...,
    tolerance_pull_angle: Optional[Quantity] = ...,
    tolerance_support_share: Optional[Quantity] = ...,
    tolerance_operator: Optional[Quantity] = ...,
    columns: Optional[Sequence[str]] = ...,
    threads: Optional[int] = ...,
) -> Table: ...
@overload
def free_joint(
    *,
    thread: Optional[Union[str, Thread]] = ...,
    property_class: Optional[Union[str, PropertyClass]] = ...,
    socket: Optional[Quantity] = ...,
    key: Optional[Quantity] = ...,
    rust: Optional[str] = ...,
    limit: Optional[Quantity] = ...,
    diameter: Optional[Quantity] = ...,
    pitch: Optional[Quantity] = ...,
    width_across_flats: Optional[Quantity] = ...,
    tensile_strength: Optional[Quantity] = ...,
    yield_strength: Optional[Quantity] = ...,
    torsion_ratio: Optional[Quantity] = ...,
    preload: Optional[Quantity] = ...,
    thread_friction: Optional[Quantity] = ...,
    bearing_friction: Optional[Quantity] = ...,
    engaged_length: Optional[Quantity] = ...,
    bearing_diameter: Optional[Quantity] = ...,
    nut_diameter: Optional[Quantity] = ...,
    nut_yield: Optional[Quantity] = ...,
    prevailing_torque: Optional[Quantity] = ...,
    years: Optional[Quantity] = ...,
    first_year_loss: Optional[Quantity] = ...,
    drive: Optional[str] = ...,
    head_height: Optional[Quantity] = ...,
    drive_clearance: Optional[Quantity] = ...,
    corner_loss: Optional[Quantity] = ...,
    square: Optional[Quantity] = ...,
    handle_length: Optional[Quantity] = ...,
    hand_force: Optional[Quantity] = ...,
    hand_variation: Optional[Quantity] = ...,
    shear_risk: Optional[Quantity] = ...,
    wanted_chance: Optional[Quantity] = ...,
    done: Optional[Sequence[Any]] = ...,
    undone: Optional[Sequence[Any]] = ...,
    zinc_or_cadmium: Optional[bool] = ...,
    adhesive: Optional[bool] = ...,
    fire_or_burst: Optional[bool] = ...,
    rubber_or_plastic: Optional[bool] = ...,
    reused: Optional[bool] = ...,
    quenched: Optional[bool] = ...,
    trials: Optional[int] = ...,
    seed: Optional[int] = ...,
    threads: Optional[int] = ...,
) -> Free: ...
@overload
def free_joint(
    table: Table,
    /,
    *,
    thread: Optional[Union[str, Thread]] = ...,
    property_class: Optional[Union[str, PropertyClass]] = ...,
    socket: Optional[Quantity] = ...,
    key: Optional[Quantity] = ...,
    rust: Optional[str] = ...,
    limit: Optional[Quantity] = ...,
    diameter: Optional[Quantity] = ...,
    pitch: Optional[Quantity] = ...,
    width_across_flats: Optional[Quantity] = ...,
    tensile_strength: Optional[Quantity] = ...,
    yield_strength: Optional[Quantity] = ...,
    torsion_ratio: Optional[Quantity] = ...,
    preload: Optional[Quantity] = ...,
    thread_friction: Optional[Quantity] = ...,
    bearing_friction: Optional[Quantity] = ...,
    engaged_length: Optional[Quantity] = ...,
    bearing_diameter: Optional[Quantity] = ...,
    nut_diameter: Optional[Quantity] = ...,
    nut_yield: Optional[Quantity] = ...,
    prevailing_torque: Optional[Quantity] = ...,
    years: Optional[Quantity] = ...,
    first_year_loss: Optional[Quantity] = ...,
    drive: Optional[str] = ...,
    head_height: Optional[Quantity] = ...,
    drive_clearance: Optional[Quantity] = ...,
    corner_loss: Optional[Quantity] = ...,
    square: Optional[Quantity] = ...,
    handle_length: Optional[Quantity] = ...,
    hand_force: Optional[Quantity] = ...,
    hand_variation: Optional[Quantity] = ...,
    shear_risk: Optional[Quantity] = ...,
    wanted_chance: Optional[Quantity] = ...,
    done: Optional[Sequence[Any]] = ...,
    undone: Optional[Sequence[Any]] = ...,
    zinc_or_cadmium: Optional[bool] = ...,
    adhesive: Optional[bool] = ...,
    fire_or_burst: Optional[bool] = ...,
    rubber_or_plastic: Optional[bool] = ...,
    reused: Optional[bool] = ...,
    quenched: Optional[bool] = ...,
    trials: Optional[int] = ...,
    seed: Optional[int] = ...,
    threads: Optional[int] = ...,
    columns: Optional[Sequence[str]] = ...,
) -> Table: ...

# Every formula of the registry.
def __getattr__(name: str) -> Formula: ...
