using CsCheck;
using GigRig.Domain.Gear;
using GigRig.Domain.Geometry;
using GigRig.Domain.Rigs;
using GigRig.Domain.Rules;
using GigRig.Domain.Units;
using GigRig.Domain.Wishes;
using GigRig.TestKit.Generating;
using GigRig.Web.Features.Workbench;
using Xunit;

namespace GigRig.Web.Tests.Features.Workbench;

/// <summary>Whatever hands do to whatever rig.</summary>
public sealed class BoardEditorPropertyTests
{
    private static readonly Gen<(RigProblem Problem, Rig Rig)> Any =
        from problem in GenProblem.Small
        from rig in GenRig.For(problem)
        select (problem, rig);

    private static readonly Gen<Hand[]> Hands = Gen.Select(Gen.Int[0, 9], Gen.Int[0, 8], Gen.Int[0, 8], Gen.Int[-5, 30], Gen.Int[-5, 30], (what, one, other, x, y) => new Hand(what, one, other, x, y)).Array[1, 12];

    [Fact]
    public void Undoing_everything_gives_what_was_and_redoing_everything_what_is() =>
        Gen.Select(Any, Hands).Sample(
            (start, hands) =>
            {
                var editor = new BoardEditor(start.Problem, BoardEdit.Of(start.Rig), Benches.Unsolved);
                List<BoardEdit> seen = [editor.Edit];
                foreach (var hand in hands)
                {
                    hand.Act(editor);
                    if (editor.Edit != seen[^1])
                        seen.Add(editor.Edit);
                }

                var ends = editor.Edit;
                List<BoardEdit> back = [ends];
                while (editor.CanUndo)
                {
                    editor.Undo();
                    back.Add(editor.Edit);
                }

                while (editor.CanRedo)
                    editor.Redo();
                return back.AsEnumerable().Reverse().SequenceEqual(seen) && editor.Edit == ends;
            },
            iter: 300);

    [Fact]
    public void What_is_said_to_be_broken_is_what_the_rule_book_says() =>
        Gen.Select(Any, Hands).Sample(
            (start, hands) =>
            {
                var editor = new BoardEditor(start.Problem, BoardEdit.Of(start.Rig), Benches.Unsolved);
                return Array.TrueForAll(hands, hand =>
                {
                    hand.Act(editor);
                    return editor.Violations == RuleBook.Check(start.Problem, editor.Rig) && editor.Score == Scorer.Score(start.Problem, editor.Rig);
                });
            },
            iter: 300);

    [Fact]
    public void The_chain_and_the_hook_up_speak_of_nothing_that_is_not_on_the_board() =>
        Gen.Select(Any, Hands).Sample(
            (start, hands) =>
            {
                var editor = new BoardEditor(start.Problem, BoardEdit.Of(start.Rig), Benches.Unsolved);
                foreach (var hand in hands)
                    hand.Act(editor);
                var placed = editor.Rig.Placements.Select(placement => placement.Id).ToHashSet();
                return editor.Rig.HookUp.All(feed => placed.Contains(feed.Device))
                    && editor.Rig.Chain.Front.Concat(editor.Rig.Chain.Loop).All(placed.Contains)
                    && editor.Violations.All(fault => fault.RuleId is not (RuleIds.OnceEach or RuleIds.KnownThings));
            },
            iter: 300);

    [Fact]
    public void A_thing_added_at_a_free_place_breaks_no_rule_of_standing() =>
        Any.Sample(
            start => start.Problem.Devices.Where(device => start.Rig.Placements.All(placement => placement.Id != device.Id)).All(device =>
                FreePlaces.First(start.Problem, start.Rig, device) is not { } free
                || RuleBook.Check(start.Problem, start.Rig with { Placements = [.. start.Rig.Placements, free] })
                    .All(fault => !fault.Culprits.Contains(device.Id) || !Standing.Contains(fault.RuleId))),
            iter: 300);

    /// <summary>Against trying every millimetre.</summary>
    [Fact]
    public void Where_no_free_place_is_found_there_is_none() =>
        Any.Where(start => start.Problem.Options.SwitchSpacing == Millimetres.Zero).Sample(
            start => start.Problem.Devices.Where(device => start.Rig.Placements.All(placement => placement.Id != device.Id)).All(device =>
                FreePlaces.First(start.Problem, start.Rig, device) is not null || !Everywhere(start.Problem, device).Any(place =>
                    RuleBook.Check(start.Problem, start.Rig with { Placements = [.. start.Rig.Placements, place] })
                        .All(fault => !fault.Culprits.Contains(device.Id) || !Standing.Contains(fault.RuleId)))),
            iter: 60);

    private static readonly string[] Standing = [RuleIds.AllowedTurn, RuleIds.InsideBoard, RuleIds.ThingsApart, RuleIds.PlugOverhang, RuleIds.KeepOuts, RuleIds.Rails, RuleIds.SwitchSpacing];

    private static IEnumerable<Placement> Everywhere(RigProblem problem, Device device) =>
        from turn in device.Turns
        from x in Enumerable.Range(0, problem.Board.Width.Value)
        from y in Enumerable.Range(0, problem.Board.Depth.Value)
        select new Placement(device.Id, new(x.Mm, y.Mm), turn);

    /// <summary>One thing done, to any of the problem's devices, standing or not.</summary>
    private sealed record Hand(int What, int One, int Other, int X, int Y)
    {
        public void Act(BoardEditor editor)
        {
            var things = editor.Problem.Devices.Select(device => device.Id).Concat(editor.Problem.Supply is { } supply ? [supply.Id] : []).ToList();
            if (things.Count == 0)
                return;
            var (one, other) = (things[One % things.Count], things[Other % things.Count]);
            switch (What)
            {
                case 0 or 1: editor.MoveTo(one, new(X.Mm, Y.Mm)); break;
                case 2: editor.Turn(one); break;
                case 3: editor.Swap(one, other); break;
                case 4: editor.Replace(one, other); break;
                case 5 or 6: editor.Add(one); break;
                case 7: editor.Remove(one); break;
                case 8: editor.LayAside(one); break;
                case 9 when editor.Edit.Aside.Count > 0: editor.PutBack(other); break;
                default: editor.ToggleLock(one); break;
            }
        }
    }
}
