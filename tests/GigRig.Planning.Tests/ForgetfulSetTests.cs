namespace GigRig.Planning.Tests;

public sealed class ForgetfulSetTests
{
    [Fact]
    public void It_forgets_the_oldest_and_never_holds_more_than_it_may()
    {
        var set = new ForgetfulSet(mostCharacters: 100);

        for (var i = 1000; i < 1100; i++)
        {
            set.Add($"{i}");
            set.Add($"{i}");
            Assert.InRange(set.Characters, 4, 100);
        }

        Assert.All(Enumerable.Range(1000, 75), i => Assert.False(set.Contains($"{i}")));
        Assert.All(Enumerable.Range(1075, 25), i => Assert.True(set.Contains($"{i}")));
    }

    [Fact]
    public void What_is_longer_than_all_it_may_hold_is_not_kept()
    {
        var set = new ForgetfulSet(mostCharacters: 3);

        set.Add("four");

        Assert.Equal((false, 0), (set.Contains("four"), set.Characters));
    }
}
