using Hotside.Circuits;

namespace Hotside.Kinds;

// Written from Kinds/data by the test KindListTests with HOTSIDE_ACCEPT=1; change the data, not this file.

/// <summary>The part kinds that come with the library, by name.</summary>
public static class Kind
{
    /// <summary>Socket for what is plugged in, its centre is the feed.</summary>
    public static PartKind AccessorySocket => Catalogue.Standard.Find("accessory-socket")!;

    /// <summary>Alternator with built-in regulator, excited through the charge lamp.</summary>
    public static PartKind Alternator => Catalogue.Standard.Find("alternator")!;

    /// <summary>Alternator whose regulator is a box of its own.</summary>
    public static PartKind AlternatorExternal => Catalogue.Standard.Find("alternator-external")!;

    /// <summary>Alternator with built-in regulator that excites itself, one wire.</summary>
    public static PartKind AlternatorOneWire => Catalogue.Standard.Find("alternator-one-wire")!;

    /// <summary>Regulator of an alternator that stands apart; it feeds the field.</summary>
    public static PartKind AlternatorRegulator => Catalogue.Standard.Find("alternator-regulator")!;

    /// <summary>Ammeter in the main feed.</summary>
    public static PartKind Ammeter => Catalogue.Standard.Find("ammeter")!;

    /// <summary>Ammeter that reads the drop along a shunt which sits elsewhere.</summary>
    public static PartKind AmmeterRemote => Catalogue.Standard.Find("ammeter-remote")!;

    /// <summary>A box that holds parts.</summary>
    public static PartKind Assembly => Catalogue.Standard.Find("assembly")!;

    /// <summary>Resistor in the feed of an ignition coil.</summary>
    public static PartKind Ballast => Catalogue.Standard.Find("ballast")!;

    /// <summary>Battery; the feed of the vehicle.</summary>
    public static PartKind Battery => Catalogue.Standard.Find("battery")!;

    /// <summary>Heavy cable kept in the list of parts, bolted on at both ends.</summary>
    public static PartKind BatteryCable => Catalogue.Standard.Find("battery-cable")!;

    /// <summary>Battery disconnect.</summary>
    public static PartKind BatteryDisconnect => Catalogue.Standard.Find("battery-disconnect")!;

    /// <summary>Two diodes that charge two batteries and keep them apart.</summary>
    public static PartKind BatteryIsolator => Catalogue.Standard.Find("battery-isolator")!;

    /// <summary>Selector of two batteries, off, one, both, two.</summary>
    public static PartKind BatterySelector => Catalogue.Standard.Find("battery-selector")!;

    /// <summary>Two batteries in series, or one with a lead from its middle.</summary>
    public static PartKind BatteryTapped => Catalogue.Standard.Find("battery-tapped")!;

    /// <summary>Resistor with a tap for the slow speeds of a heater fan.</summary>
    public static PartKind BlowerResistor => Catalogue.Standard.Find("blower-resistor")!;

    /// <summary>Push button, open while pressed.</summary>
    public static PartKind BreakButton => Catalogue.Standard.Find("break-button")!;

    /// <summary>Circuit breaker.</summary>
    public static PartKind Breaker => Catalogue.Standard.Find("breaker")!;

    /// <summary>Circuit breaker that stays open as long as it is fed.</summary>
    public static PartKind BreakerHeld => Catalogue.Standard.Find("breaker-held")!;

    /// <summary>Circuit breaker that a hand closes again and may open.</summary>
    public static PartKind BreakerManual => Catalogue.Standard.Find("breaker-manual")!;

    /// <summary>One bullet in its sleeve.</summary>
    public static PartKind BulletConnector => Catalogue.Standard.Find("bullet-connector")!;

    /// <summary>Buzzer or bell.</summary>
    public static PartKind Buzzer => Catalogue.Standard.Find("buzzer")!;

    /// <summary>Condenser or suppressor capacitor, the case is its second terminal.</summary>
    public static PartKind Capacitor => Catalogue.Standard.Find("capacitor")!;

    /// <summary>Switch that joins its first terminal to the second or the third.</summary>
    public static PartKind ChangeoverSwitch => Catalogue.Standard.Find("changeover-switch")!;

    /// <summary>Lamp between the ignition feed and the charging machine; lit while the machine gives less than the battery.</summary>
    public static PartKind ChargeLamp => Catalogue.Standard.Find("charge-lamp")!;

    /// <summary>Named screw on the chassis where returns meet.</summary>
    public static PartKind ChassisPoint => Catalogue.Standard.Find("chassis-point")!;

    /// <summary>Cigar lighter with its switch, the shell is its second terminal.</summary>
    public static PartKind CigarLighter => Catalogue.Standard.Find("cigar-lighter")!;

    /// <summary>Self-winding clock.</summary>
    public static PartKind Clock => Catalogue.Standard.Find("clock")!;

    /// <summary>Clock with electronic works.</summary>
    public static PartKind ClockElectronic => Catalogue.Standard.Find("clock-electronic")!;

    /// <summary>Turn lever and horn push on one column; stop lamps pass through it.</summary>
    public static PartKind ColumnSwitch => Catalogue.Standard.Find("column-switch")!;

    /// <summary>Plug and socket of some ways; half a and half b are two terminals a way.</summary>
    public static PartKind Connector => Catalogue.Standard.Find("connector")!;

    /// <summary>Lamp that the door switches ground.</summary>
    public static PartKind CourtesyLamp => Catalogue.Standard.Find("courtesy-lamp")!;

    /// <summary>Cut-out that joins generator and battery while the machine charges.</summary>
    public static PartKind CutOut => Catalogue.Standard.Find("cut-out")!;

    /// <summary>Foot dimmer, high or low beam.</summary>
    public static PartKind Dimmer => Catalogue.Standard.Find("dimmer")!;

    /// <summary>Diode.</summary>
    public static PartKind Diode => Catalogue.Standard.Find("diode")!;

    /// <summary>Distributor with points and condenser.</summary>
    public static PartKind Distributor => Catalogue.Standard.Find("distributor")!;

    /// <summary>Door switch, closed while the door is open, returning through its body.</summary>
    public static PartKind DoorSwitch => Catalogue.Standard.Find("door-switch")!;

    /// <summary>Resistor in series with one load that keeps its old voltage.</summary>
    public static PartKind DroppingResistor => Catalogue.Standard.Find("dropping-resistor")!;

    /// <summary>Electronic flasher with a ground of its own.</summary>
    public static PartKind ElectronicFlasher => Catalogue.Standard.Find("electronic-flasher")!;

    /// <summary>The end of the page, the rest of the vehicle, with any terminal.</summary>
    public static PartKind Elsewhere => Catalogue.Standard.Find("elsewhere")!;

    /// <summary>Feed rail, one terminal with many wires.</summary>
    public static PartKind FeedRail => Catalogue.Standard.Find("feed-rail")!;

    /// <summary>Thermal flasher with a terminal for the pilot lamp.</summary>
    public static PartKind FlasherPilot => Catalogue.Standard.Find("flasher-pilot")!;

    /// <summary>Starter switch worked by the foot.</summary>
    public static PartKind FootStarterSwitch => Catalogue.Standard.Find("foot-starter-switch")!;

    /// <summary>Electric fuel pump.</summary>
    public static PartKind FuelPump => Catalogue.Standard.Find("fuel-pump")!;

    /// <summary>Fuel pump with a diode or with electronics.</summary>
    public static PartKind FuelPumpElectronic => Catalogue.Standard.Find("fuel-pump-electronic")!;

    /// <summary>Fuse.</summary>
    public static PartKind Fuse => Catalogue.Standard.Find("fuse")!;

    /// <summary>Fuses side by side on one feed.</summary>
    public static PartKind FuseBlock => Catalogue.Standard.Find("fuse-block")!;

    /// <summary>Fuses side by side, each with a feed of its own.</summary>
    public static PartKind FuseBlockSeparate => Catalogue.Standard.Find("fuse-block-separate")!;

    /// <summary>Fusible link.</summary>
    public static PartKind FusibleLink => Catalogue.Standard.Find("fusible-link")!;

    /// <summary>Gauge with one heated or wound element, in series with its sender.</summary>
    public static PartKind Gauge => Catalogue.Standard.Find("gauge")!;

    /// <summary>Gauge with crossed coils that turn a magnet.</summary>
    public static PartKind GaugeAirCore => Catalogue.Standard.Find("gauge-air-core")!;

    /// <summary>Gauge with two balanced coils.</summary>
    public static PartKind GaugeBalanced => Catalogue.Standard.Find("gauge-balanced")!;

    /// <summary>Thermal voltage limiter that feeds gauges.</summary>
    public static PartKind GaugeLimiter => Catalogue.Standard.Find("gauge-limiter")!;

    /// <summary>Generator with its field brought out and grounded at the regulator.</summary>
    public static PartKind Generator => Catalogue.Standard.Find("generator")!;

    /// <summary>Generator with the field grounded inside, regulated from the feed side.</summary>
    public static PartKind GeneratorFieldInside => Catalogue.Standard.Find("generator-field-inside")!;

    /// <summary>Generator that limits itself by a third brush, its field inside.</summary>
    public static PartKind GeneratorThirdBrush => Catalogue.Standard.Find("generator-third-brush")!;

    /// <summary>Glow plug of a diesel engine, grounded by its thread.</summary>
    public static PartKind GlowPlug => Catalogue.Standard.Find("glow-plug")!;

    /// <summary>Braided strap from engine, body or battery to the chassis.</summary>
    public static PartKind GroundStrap => Catalogue.Standard.Find("ground-strap")!;

    /// <summary>Switch that flashes both sides and feeds the flasher from the battery.</summary>
    public static PartKind HazardSwitch => Catalogue.Standard.Find("hazard-switch")!;

    /// <summary>Headlamp with high and low beam in one bulb.</summary>
    public static PartKind Headlamp => Catalogue.Standard.Find("headlamp")!;

    /// <summary>Two relays in one box for high and low beams, a fuse for each lamp.</summary>
    public static PartKind HeadlampRelays => Catalogue.Standard.Find("headlamp-relays")!;

    /// <summary>Heating element.</summary>
    public static PartKind Heater => Catalogue.Standard.Find("heater")!;

    /// <summary>Plunger magnet whose pull-in winding cuts itself off, as for an overdrive.</summary>
    public static PartKind HoldingSolenoid => Catalogue.Standard.Find("holding-solenoid")!;

    /// <summary>Horn with two insulated studs.</summary>
    public static PartKind Horn => Catalogue.Standard.Find("horn")!;

    /// <summary>Horn button on the steering column, one wire, its body grounds.</summary>
    public static PartKind HornButton => Catalogue.Standard.Find("horn-button")!;

    /// <summary>Horn button with two insulated wires.</summary>
    public static PartKind HornButtonInsulated => Catalogue.Standard.Find("horn-button-insulated")!;

    /// <summary>Horn with one stud, returning through its frame.</summary>
    public static PartKind HornCase => Catalogue.Standard.Find("horn-case")!;

    /// <summary>Horn relay with three terminals, its coil fed inside from B.</summary>
    public static PartKind HornRelay => Catalogue.Standard.Find("horn-relay")!;

    /// <summary>Ignition coil; the breaker grounds its primary.</summary>
    public static PartKind IgnitionCoil => Catalogue.Standard.Find("ignition-coil")!;

    /// <summary>Electronic ignition in place of points.</summary>
    public static PartKind IgnitionModule => Catalogue.Standard.Find("ignition-module")!;

    /// <summary>Ignition switch, locked, accessories, run, start.</summary>
    public static PartKind IgnitionSwitch => Catalogue.Standard.Find("ignition-switch")!;

    /// <summary>Magneto kill switch, closed means off.</summary>
    public static PartKind KillSwitch => Catalogue.Standard.Find("kill-switch")!;

    /// <summary>Lamp with one filament.</summary>
    public static PartKind Lamp => Catalogue.Standard.Find("lamp")!;

    /// <summary>Lamp with one filament, returning through its shell.</summary>
    public static PartKind LampCase => Catalogue.Standard.Find("lamp-case")!;

    /// <summary>Latching relay, set by one coil, reset by the other, stays between.</summary>
    public static PartKind LatchingRelay => Catalogue.Standard.Find("latching-relay")!;

    /// <summary>Lamp with light-emitting diodes; minds its polarity.</summary>
    public static PartKind LedLamp => Catalogue.Standard.Find("led-lamp")!;

    /// <summary>LED lamp with a bridge, either way round.</summary>
    public static PartKind LedLampBridge => Catalogue.Standard.Find("led-lamp-bridge")!;

    /// <summary>Light switch with park and head positions and its own breaker.</summary>
    public static PartKind LightSwitch => Catalogue.Standard.Find("light-switch")!;

    /// <summary>Pull switch for park and head lamps with a rheostat for the panel lamps and its own breaker.</summary>
    public static PartKind LightSwitchRheostat => Catalogue.Standard.Find("light-switch-rheostat")!;

    /// <summary>Resistor beside an LED lamp that imitates a filament; it burns what the lamp saves and gets too hot to touch.</summary>
    public static PartKind LoadResistor => Catalogue.Standard.Find("load-resistor")!;

    /// <summary>Magneto, its own source; grounded at 2 to stop.</summary>
    public static PartKind Magneto => Catalogue.Standard.Find("magneto")!;

    /// <summary>Body metal that stands on straps, engine, body, tank, keel.</summary>
    public static PartKind Metal => Catalogue.Standard.Find("metal")!;

    /// <summary>Motor of a fan, a blower or a pump.</summary>
    public static PartKind Motor => Catalogue.Standard.Find("motor")!;

    /// <summary>Motor with permanent magnets; turns the other way when its leads are swapped.</summary>
    public static PartKind MotorMagnet => Catalogue.Standard.Find("motor-magnet")!;

    /// <summary>Motor with its field in series.</summary>
    public static PartKind MotorSeries => Catalogue.Standard.Find("motor-series")!;

    /// <summary>Motor with its field brought out, so that a resistor in the field sets its speed.</summary>
    public static PartKind MotorShunt => Catalogue.Standard.Find("motor-shunt")!;

    /// <summary>Oil-pressure switch, closed without pressure, returning through its body.</summary>
    public static PartKind OilSwitch => Catalogue.Standard.Find("oil-switch")!;

    /// <summary>Oil-pressure switch, closed by pressure, with two studs.</summary>
    public static PartKind OilSwitchMake => Catalogue.Standard.Find("oil-switch-make")!;

    /// <summary>Key switch with preheat, run and start for a diesel engine.</summary>
    public static PartKind PreheatSwitch => Catalogue.Standard.Find("preheat-switch")!;

    /// <summary>Switch that is pulled to close.</summary>
    public static PartKind PullSwitch => Catalogue.Standard.Find("pull-switch")!;

    /// <summary>Push button, closed while pressed.</summary>
    public static PartKind PushButton => Catalogue.Standard.Find("push-button")!;

    /// <summary>Radio or another device that draws current by itself.</summary>
    public static PartKind Radio => Catalogue.Standard.Find("radio")!;

    /// <summary>Radio with tubes and a vibrator.</summary>
    public static PartKind RadioVibrator => Catalogue.Standard.Find("radio-vibrator")!;

    /// <summary>Series regulator that holds a lower voltage for gauges.</summary>
    public static PartKind Reducer => Catalogue.Standard.Find("reducer")!;

    /// <summary>Voltage regulator with cut-out and current units in one box.</summary>
    public static PartKind Regulator => Catalogue.Standard.Find("regulator")!;

    /// <summary>Voltage regulator with cut-out that feeds the field from the armature, for a field grounded inside the generator.</summary>
    public static PartKind RegulatorFieldFed => Catalogue.Standard.Find("regulator-field-fed")!;

    /// <summary>Plug-in relay, one coil, one make contact, all ends free.</summary>
    public static PartKind Relay => Catalogue.Standard.Find("relay")!;

    /// <summary>Plug-in relay with a break contact.</summary>
    public static PartKind RelayBreak => Catalogue.Standard.Find("relay-break")!;

    /// <summary>Plug-in relay with a change-over contact.</summary>
    public static PartKind RelayChangeover => Catalogue.Standard.Find("relay-changeover")!;

    /// <summary>Plug-in relay with a diode across its coil.</summary>
    public static PartKind RelayDiode => Catalogue.Standard.Find("relay-diode")!;

    /// <summary>Plug-in relay with two make contacts fed together.</summary>
    public static PartKind RelayDouble => Catalogue.Standard.Find("relay-double")!;

    /// <summary>Plug-in relay with a resistor across its coil.</summary>
    public static PartKind RelayResistor => Catalogue.Standard.Find("relay-resistor")!;

    /// <summary>Resistor, dropper or ballast.</summary>
    public static PartKind Resistor => Catalogue.Standard.Find("resistor")!;

    /// <summary>Switch of the reversing lamp, closed while the gear is in.</summary>
    public static PartKind ReverseSwitch => Catalogue.Standard.Find("reverse-switch")!;

    /// <summary>Panel-lamp rheostat.</summary>
    public static PartKind Rheostat => Catalogue.Standard.Find("rheostat")!;

    /// <summary>Roof lamp with its own three-way switch, doors, on, off.</summary>
    public static PartKind RoofLamp => Catalogue.Standard.Find("roof-lamp")!;

    /// <summary>Switch whose knob joins its first terminal to one of three.</summary>
    public static PartKind RotarySwitch => Catalogue.Standard.Find("rotary-switch")!;

    /// <summary>Semaphore arm, its lamp lights when the arm is out.</summary>
    public static PartKind Semaphore => Catalogue.Standard.Find("semaphore")!;

    /// <summary>Sender, a resistance that a level, a temperature or a pressure moves.</summary>
    public static PartKind Sender => Catalogue.Standard.Find("sender")!;

    /// <summary>Sender with a heated contact that the gauge's current opens and closes.</summary>
    public static PartKind SenderHeated => Catalogue.Standard.Find("sender-heated")!;

    /// <summary>Shunt of an ammeter that sits elsewhere.</summary>
    public static PartKind Shunt => Catalogue.Standard.Find("shunt")!;

    /// <summary>Shunt with two screws for its ammeter.</summary>
    public static PartKind ShuntSensed => Catalogue.Standard.Find("shunt-sensed")!;

    /// <summary>Solar panel; a feed while it is light.</summary>
    public static PartKind SolarPanel => Catalogue.Standard.Find("solar-panel")!;

    /// <summary>Charge regulator between solar panel and battery.</summary>
    public static PartKind SolarRegulator => Catalogue.Standard.Find("solar-regulator")!;

    /// <summary>Plunger magnet with one winding, such as a fuel cut-off or choke.</summary>
    public static PartKind Solenoid => Catalogue.Standard.Find("solenoid")!;

    /// <summary>Spark plug.</summary>
    public static PartKind SparkPlug => Catalogue.Standard.Find("spark-plug")!;

    /// <summary>Switch with two speeds, as for a heater fan.</summary>
    public static PartKind SpeedSwitch => Catalogue.Standard.Find("speed-switch")!;

    /// <summary>Splice of two or more wires.</summary>
    public static PartKind Splice => Catalogue.Standard.Find("splice")!;

    /// <summary>Relay that joins a second battery while the machine charges.</summary>
    public static PartKind SplitChargeRelay => Catalogue.Standard.Find("split-charge-relay")!;

    /// <summary>Starter motor, returning through its case.</summary>
    public static PartKind Starter => Catalogue.Standard.Find("starter")!;

    /// <summary>Starter motor with two insulated studs.</summary>
    public static PartKind StarterIsolated => Catalogue.Standard.Find("starter-isolated")!;

    /// <summary>Starter with permanent magnets.</summary>
    public static PartKind StarterMagnet => Catalogue.Standard.Find("starter-magnet")!;

    /// <summary>Starter relay with both coil ends free.</summary>
    public static PartKind StarterRelay => Catalogue.Standard.Find("starter-relay")!;

    /// <summary>Starter relay with its coil on the case; I bypasses the ballast while cranking.</summary>
    public static PartKind StarterRelayCase => Catalogue.Standard.Find("starter-relay-case")!;

    /// <summary>Starter relay with its coil fed inside from the battery stud; the button grounds S.</summary>
    public static PartKind StarterRelayInternal => Catalogue.Standard.Find("starter-relay-internal")!;

    /// <summary>Solenoid on the starter, pull-in winding through the motor, hold-in winding to the case.</summary>
    public static PartKind StarterSolenoid => Catalogue.Standard.Find("starter-solenoid")!;

    /// <summary>Stop-lamp switch at the brake pedal.</summary>
    public static PartKind StopSwitch => Catalogue.Standard.Find("stop-switch")!;

    /// <summary>Stop-lamp switch worked by brake pressure.</summary>
    public static PartKind StopSwitchHydraulic => Catalogue.Standard.Find("stop-switch-hydraulic")!;

    /// <summary>Stud that several terminals share.</summary>
    public static PartKind Stud => Catalogue.Standard.Find("stud")!;

    /// <summary>Capacitor with two leads.</summary>
    public static PartKind Suppressor => Catalogue.Standard.Find("suppressor")!;

    /// <summary>Switch with one contact.</summary>
    public static PartKind Switch => Catalogue.Standard.Find("switch")!;

    /// <summary>Alternator with output and return insulated from the case.</summary>
    public static PartKind SwitchedAlternator => Catalogue.Standard.Find("switched-alternator")!;

    /// <summary>Electric revolution counter fed from the ignition coil.</summary>
    public static PartKind Tachometer => Catalogue.Standard.Find("tachometer")!;

    /// <summary>Tail and stop lamp in one bulb.</summary>
    public static PartKind TailStopLamp => Catalogue.Standard.Find("tail-stop-lamp")!;

    /// <summary>Temperature switch, closed to its body when hot.</summary>
    public static PartKind TemperatureSwitch => Catalogue.Standard.Find("temperature-switch")!;

    /// <summary>Terminal strip of some ways; a and b are the two screws of a way.</summary>
    public static PartKind TerminalBlock => Catalogue.Standard.Find("terminal-block")!;

    /// <summary>Thermal flasher, heated by the lamps it feeds.</summary>
    public static PartKind ThermalFlasher => Catalogue.Standard.Find("thermal-flasher")!;

    /// <summary>Temperature switch with two terminals, as for a fan.</summary>
    public static PartKind ThermoSwitch => Catalogue.Standard.Find("thermo-switch")!;

    /// <summary>Trailer plug and socket of seven poles.</summary>
    public static PartKind TrailerSocket => Catalogue.Standard.Find("trailer-socket")!;

    /// <summary>Trailer plug and socket of thirteen poles.</summary>
    public static PartKind TrailerSocket13 => Catalogue.Standard.Find("trailer-socket-13")!;

    /// <summary>Turn-signal switch that the stop lamps pass through, for rear lamps that do both.</summary>
    public static PartKind TurnStopSwitch => Catalogue.Standard.Find("turn-stop-switch")!;

    /// <summary>Turn-signal switch.</summary>
    public static PartKind TurnSwitch => Catalogue.Standard.Find("turn-switch")!;

    /// <summary>Voltmeter.</summary>
    public static PartKind Voltmeter => Catalogue.Standard.Find("voltmeter")!;

    /// <summary>Tell-tale whose sender grounds it.</summary>
    public static PartKind WarningLamp => Catalogue.Standard.Find("warning-lamp")!;

    /// <summary>Wiper motor with a park cam; its switch stands outside.</summary>
    public static PartKind Wiper => Catalogue.Standard.Find("wiper")!;

    /// <summary>Wound wiper motor whose dash switch grounds it; its park cam grounds it until the arms rest.</summary>
    public static PartKind WiperGroundSwitched => Catalogue.Standard.Find("wiper-ground-switched")!;

    /// <summary>Wiper switch that leads the park lead to the motor when off.</summary>
    public static PartKind WiperSwitch => Catalogue.Standard.Find("wiper-switch")!;

    /// <summary>Wiper switch for two speeds that leads the park lead to the motor when off.</summary>
    public static PartKind WiperSwitchTwoSpeed => Catalogue.Standard.Find("wiper-switch-two-speed")!;

    /// <summary>Wiper motor with two speeds and a park cam; its switch stands outside.</summary>
    public static PartKind WiperTwoSpeed => Catalogue.Standard.Find("wiper-two-speed")!;
}
