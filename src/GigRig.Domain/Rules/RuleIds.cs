namespace GigRig.Domain.Rules;

/// <summary>The stable names of the rules, as they appear in violations, conflicts and <c>docs/rules.md</c>.</summary>
public static class RuleIds
{
    public const string KnownThings = "known-things";
    public const string OnceEach = "once-each";
    public const string AllowedTurn = "allowed-turn";
    public const string InsideBoard = "inside-board";
    public const string ThingsApart = "things-apart";
    public const string PlugOverhang = "plug-overhang";
    public const string KeepOuts = "keep-outs";
    public const string Rails = "rails";
    public const string Lid = "lid";
    public const string SupplySpace = "supply-space";
    public const string BoardLoad = "board-load";
    public const string SwitchSpacing = "switch-spacing";
    public const string FixedPlaces = "fixed-places";
    public const string DevicesFed = "devices-fed";
    public const string OutletSetting = "outlet-setting";
    public const string OutletVoltage = "outlet-voltage";
    public const string OutletKind = "outlet-kind";
    public const string OutletPolarity = "outlet-polarity";
    public const string IsolatedOutlet = "isolated-outlet";
    public const string OutletCurrent = "outlet-current";
    public const string OutletSharing = "outlet-sharing";
    public const string OutletJoining = "outlet-joining";
    public const string AdapterLeads = "adapter-leads";
    public const string TotalCurrent = "total-current";
    public const string MustsCovered = "musts-covered";
    public const string SoundsPlayable = "sounds-playable";
    public const string MassLimit = "mass-limit";
    public const string DeviceLimit = "device-limit";
    public const string FreeArea = "free-area";
    public const string Pins = "pins";
    public const string Bans = "bans";
    public const string AudioChain = "audio-chain";
}
