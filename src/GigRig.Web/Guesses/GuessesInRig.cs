using GigRig.Domain;
using GigRig.Domain.Gear;
using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;
using GigRig.Domain.Units;
using GigRig.Domain.Wiring;
using GigRig.Web.Shared;

namespace GigRig.Web.Guesses;

/// <summary>What one guess means for one rig.</summary>
/// <param name="Breaks">Whether the rig would not stand it if the guess is wrong in the way that was tried.</param>
public sealed record RigGuess(GearId Thing, string Name, Guess Guess, string Sentence, bool Breaks = false);

/// <summary>
/// Looks at every guess about the things of a rig, with the rig's own numbers: each is turned out the other way and the rule book asked whether the rig
/// would stand it. What cannot matter for this rig is left out.
/// </summary>
/// <param name="guesses">Of every stored thing, under the name it goes by in problems.</param>
/// <param name="unit">The owner's. What the rule book says is quoted as it says it, in millimetres.</param>
internal sealed class GuessesInRig(LeadPlan plan, IReadOnlyDictionary<GearId, ValueList<Guess>> guesses, LengthUnit unit)
{
    private readonly RigProblem problem = plan.Problem;
    private readonly Rig rig = plan.Rig;

    /// <summary>Those that would break the rig first.</summary>
    public ValueList<RigGuess> Find() =>
        new[] { Board(), Supply() }
            .Concat(rig.Placements.Select(placement => problem.FindDevice(placement.Id)).OfType<Device>().Select(Device))
            .Append(Amp())
            .Append(Instrument())
            .Append(Leads())
            .SelectMany(found => found)
            .OrderByDescending(found => found.Breaks)
            .ToValueList();

    private IEnumerable<RigGuess> Device(Device device)
    {
        foreach (var guess in Of(device.Id))
        {
            var found = (guess, device) switch
            {
                (Guess.Size, _) when WhatIf.AtItsLargest(device) is { } largest =>
                    Tried(device.Id, guess, $"at the largest such boxes come ({Measures.Footprint(largest.Size.Width, largest.Size.Depth, unit)})", WhatIf.With(problem, largest)),
                (Guess.Size, _) => new(device.Id, device.Name, guess, "taken from the word for it. Measure it before you fix anything."),
                (Guess.Jacks, _) => Tried(device.Id, guess, "with all its plugs at the rear", WhatIf.With(problem, WhatIf.WithPlugsAtTheRear(device))),
                (Guess.Draw, { Power: { } power }) => Draw(device, power),
                (Guess.Voltage, { Power: { } power }) => new(device.Id, device.Name, guess, $"fed as {power.Min} DC, centre negative. A wrong voltage or polarity can destroy it: look at its label first."),
                (Guess.Height, _) when problem.Board.ClearanceOver is { } lid => new(device.Id, device.Name, guess, $"taken as {LengthText.Format(device.Size.Height, unit)}; the lid leaves {LengthText.Format(lid, unit)}."),
                (Guess.Mass, _) when problem.Event.Limits.Mass is not null || problem.Board.MaxLoad is not null =>
                    new(device.Id, device.Name, guess, $"taken as {device.Mass}, and counted as that where mass is limited."),
                (Guess.Switches, _) when problem.Options.SwitchSpacing > Millimetres.Zero => new(device.Id, device.Name, guess, "taken as in a row near the front."),
                _ => null,
            };
            if (found is not null)
                yield return found;
        }
    }

    private IEnumerable<RigGuess> Board()
    {
        foreach (var guess in Of(problem.Board.Id))
        {
            if (guess == Guess.Surface)
                yield return new(problem.Board.Id, problem.Board.Name, guess, "taken as plain, with no rails and nothing in the way.");
            else if (guess == Guess.Overhang && Tried(problem.Board.Id, guess, "if no plug may stick out over its edges", WhatIf.WithoutOverhang(problem)) is { Breaks: true } found)
                yield return found;
        }
    }

    private IEnumerable<RigGuess> Supply()
    {
        if (problem.Supply is not { } supply)
            yield break;
        foreach (var guess in Of(supply.Id))
        {
            if (guess == Guess.Mount)
                yield return new(supply.Id, supply.Name, guess, supply.Mount == SupplyMount.Off ? "taken as lying beside the board, where it takes no room." : "taken as fitting under the board.");
            else if (guess == Guess.Returns)
                yield return Tried(supply.Id, guess, "if all its outlets share one return", WhatIf.WithOneReturn(problem));
        }
    }

    private IEnumerable<RigGuess> Amp() => problem.Amp is { } amp && Of(amp.Id).Contains(Guess.Loop)
        ? [new(amp.Id, amp.Name, Guess.Loop, "taken as without one, so everything is in front of it.")]
        : [];

    private IEnumerable<RigGuess> Instrument() => problem.Instrument is { } instrument && Of(instrument.Id).Contains(Guess.Family)
        ? [new(instrument.Id, instrument.Name, Guess.Family, $"taken as wired like a {Words.Of(instrument.Family).ToLowerInvariant()}; the chain and its leads go by that.")]
        : [];

    /// <summary>Of those the rig is wired with.</summary>
    private IEnumerable<RigGuess> Leads()
    {
        foreach (var (lead, _) in plan.Used)
        {
            if (Of(lead.Id).Contains(Guess.LeadKind))
                yield return new(lead.Id, lead.Name, Guess.LeadKind, $"taken as {GuessWords.LeadOf(lead.Kind)}.");
            if (Of(lead.Id).Contains(Guess.Plugs))
                yield return new(lead.Id, lead.Name, Guess.Plugs, $"taken as {GuessWords.PlugsOf(lead)}. Look before you count on it where things stand close.");
        }
    }

    private RigGuess Draw(Device device, PowerNeed power)
    {
        if (rig.HookUp.FirstOrDefault(feed => feed.Device == device.Id) is not { OnBattery: false } feed)
            return new(device.Id, device.Name, Guess.Draw, $"taken as {power.Current}, from its own battery.");
        var outlets = feed.Outlets.Select(problem.FindOutlet).OfType<Outlet>().ToList();
        var gives = feed.Join == OutletJoin.Series ? outlets.Min(outlet => outlet.Current) : outlets.Select(outlet => outlet.Current).Aggregate((sum, next) => sum + next);
        var asked = rig.HookUp.Where(other => other.Outlets.Intersect(feed.Outlets).Any())
            .Select(other => problem.FindDevice(other.Device)?.Power?.DrawWith(problem.Options.Headroom) ?? Milliamps.Zero)
            .Aggregate((sum, next) => sum + next);
        var where = $"{(feed.Outlets.Count == 1 ? "outlet" : "outlets")} {string.Join(" + ", feed.Outlets)}";
        return new(device.Id, device.Name, Guess.Draw, $"taken as {power.Current}. It may draw {gives - asked} more before {where}, which gives {gives}, is too weak.", gives == asked);
    }

    private RigGuess Tried(GearId id, Guess guess, string attempt, RigProblemDraft changed)
    {
        var breaks = WhatIf.Breaks(problem, rig, changed) ?? [];
        return new(id, problem.NameOf(id), guess, breaks.Count == 0 ? $"a guess; {attempt} this rig would still do." : $"a guess; {attempt} this rig would not do: {breaks[0].Sentence.In(unit)}", breaks.Count > 0);
    }

    private ValueList<Guess> Of(GearId id) => guesses.GetValueOrDefault(id);
}
