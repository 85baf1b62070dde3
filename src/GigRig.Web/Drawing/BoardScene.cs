using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Wiring;

namespace GigRig.Web.Drawing;

/// <summary>Everything the picture of a rig shows, in millimetres; the canvas, the static drawing and the print all draw this and nothing else.</summary>
/// <param name="Title">What the picture is of, for those who hear it.</param>
/// <param name="Description">What stands where, in words.</param>
/// <param name="Extent">All that is drawn, with a margin.</param>
/// <param name="TextSize">Height of the letters, chosen so that they can be read when the picture is as wide as a phone.</param>
public sealed record BoardScene(
    string Title,
    string Description,
    SceneArea Extent,
    double TextSize,
    SceneArea Surface,
    ValueList<SceneArea> Rails,
    ValueList<SceneArea> KeepOuts,
    ValueList<SceneBody> Bodies,
    ValueList<SceneLead> Leads,
    ValueList<SceneTag> Ends,
    SceneScaleBar ScaleBar,
    ValueList<LegendLine> Legend);

/// <summary>A device, or a supply that stands on the board.</summary>
/// <param name="Number">Its place in the audio order, then in reading order; the same number leads its line of the legend.</param>
/// <param name="Front">The edge that faces the player when the thing is not turned.</param>
/// <param name="Switches">Centres of its foot switches.</param>
public sealed record SceneBody(
    GearId Id,
    int Number,
    string Name,
    SceneArea Area,
    Turn Turn,
    SceneEdge Front,
    RoleGlyph Glyph,
    BodyLabel Label,
    ValueList<ScenePlug> Plugs,
    ValueList<SceneSpot> Switches);

/// <summary>A straight edge from one spot to another.</summary>
public readonly record struct SceneEdge(SceneSpot From, SceneSpot To);

/// <summary>What a plug stub carries; drawn with a different outline, not only another colour.</summary>
public enum PlugKind
{
    Audio,
    Power,
}

/// <summary>The space a plug takes beside a body.</summary>
public sealed record ScenePlug(PlugKind Kind, SceneArea Area);

/// <summary>A patch lead: a line with corners from an out plug to the next in plug, around the bodies. The loop's are drawn dashed.</summary>
/// <param name="Mark">The letter it goes by in the list of leads.</param>
public sealed record SceneLead(ChainPart Part, string Mark, GearId FromId, GearId ToId, ValueList<SceneSpot> Corners)
{
    /// <summary>Where its letter stands.</summary>
    public SceneSpot Middle => SceneSpot.MiddleOf(Corners);
}

/// <summary>A short word at a spot, such as where the instrument goes in or which outlet a power plug is fed from.</summary>
public sealed record SceneTag(string Text, SceneSpot At);

/// <summary>A bar of a length that is round in the reader's unit.</summary>
/// <param name="Length">In millimetres, as everything here.</param>
public sealed record SceneScaleBar(SceneSpot From, double Length, string Text);

/// <summary>One line below the picture: what a number stands for, in full.</summary>
/// <param name="Roles">What it does in this rig, in plain words.</param>
/// <param name="Power">Where its power comes from, in plain words; empty where it needs none.</param>
public sealed record LegendLine(int Number, GearId Id, string Name, string Roles, string Power, Turn Turn, RoleGlyph Glyph);
