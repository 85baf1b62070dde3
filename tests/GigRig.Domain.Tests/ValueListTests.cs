namespace GigRig.Domain.Tests;

public sealed class ValueListTests
{
    [Fact]
    public void Lists_of_equal_items_in_the_same_order_are_equal()
    {
        Assert.True((ValueList<int>)[1, 2] == [1, 2]);
        Assert.True((ValueList<int>)[1, 2] != [2, 1]);
        Assert.Equal(((ValueList<int>)[1, 2]).GetHashCode(), ((ValueList<int>)[1, 2]).GetHashCode());
    }

    [Fact]
    public void A_list_that_was_never_set_is_empty() => Assert.True(default(ValueList<int>) == []);

    [Fact]
    public void What_it_was_made_from_can_change_without_changing_it()
    {
        var source = new List<int> { 1, 2 };
        var list = source.ToValueList();
        source[0] = 9;
        Assert.Equal([1, 2], list);
    }
}
