using CsCheck;
using GigRig.Web.Features.Gear.Table;
using Xunit;

namespace GigRig.Web.Tests.Features.Gear.Table;

public sealed class TableTextTests
{
    [Theory]
    [InlineData("a,b\n1,2\n", ",")]
    [InlineData("a;b\n1,5;2,5\n", ";")]
    [InlineData("a\tb\n1, 2\t3\n", "\t")]
    [InlineData("a|b\n1|2\n", "|")]
    [InlineData("\"x,y,z\";b\n\"1,2,3\";2\n", ";")]
    public void The_delimiter_is_found(string text, string delimiter)
    {
        var table = TableText.Read(text, out var fault);

        Assert.Equal("", fault);
        Assert.Equal((delimiter, 2, 2), (table!.Delimiter, table.Columns, table.Rows.Count));
    }

    /// <summary>RFC 4180, section 2, rules 5 to 7: fields in quotes may hold the delimiter, line breaks and doubled quotes.</summary>
    [Fact]
    public void Quoted_cells_hold_what_they_hold()
    {
        var table = TableText.Read("name,note\r\n\"Big, \"\"loud\"\"\",\"two\r\nlines\"\r\n", out _);

        Assert.Equal(["Big, \"loud\"", "two\r\nlines"], table!.Rows[1].Cells);
    }

    [Fact]
    public void An_inch_mark_is_no_quotation_mark() =>
        Assert.Equal(["Meadow", "2 3/4\" x 5\"", "5 1/2\"", "drive"], TableText.Read("Name,Size,Depth,Does\nMeadow,2 3/4\" x 5\",5 1/2\",drive\nTower,1,2,3\n", out _)!.Rows[1].Cells);

    [Fact]
    public void Short_rows_are_filled_up_and_empty_ones_left_out_with_their_lines_counted()
    {
        var table = TableText.Read("a,b,c\n1\n\n,,\n2,3,4\n", out _);

        Assert.Equal([1, 2, 5], table!.Rows.Select(row => row.Line));
        Assert.Equal(["1", "", ""], table.Rows[1].Cells);
    }

    [Fact]
    public void What_looks_like_a_formula_is_text() =>
        Assert.Equal(["=1+1", "@SUM(A1)", "+3", "-2"], TableText.Read("=1+1,@SUM(A1),+3,-2", out _)!.Rows[0].Cells);

    [Theory]
    [InlineData("", "There is nothing in it")]
    [InlineData("\n \n", "There is nothing in it")]
    public void An_empty_text_says_what_to_give(string text, string complaint)
    {
        Assert.Null(TableText.Read(text, out var fault));
        Assert.Contains(complaint, fault);
    }

    [Fact]
    public void Too_many_rows_too_many_columns_and_too_long_cells_are_named_with_their_limit()
    {
        Assert.Null(TableText.Read(string.Concat(Enumerable.Repeat("a,b\n", 2001)), out var rows));
        Assert.Contains("2000", rows);
        Assert.Null(TableText.Read(new string(',', 40) + "x", out var columns));
        Assert.Contains("Line 1 has 41 columns; give at most 40", columns);
        Assert.Null(TableText.Read("a,b\nx," + new string('y', 4001), out var cell));
        Assert.Contains("Line 2 has a cell of 4001 characters", cell);
    }

    [Fact]
    public void Any_cells_that_are_written_are_read_back()
    {
        var cell = Gen.OneOf("a", "é", "\"", ",", ";", "\n", " ", "=", "7").Array[1, 8].Select(parts => "x" + string.Concat(parts).TrimEnd());
        Gen.Select(cell.Array[2, 4].Array[1, 4], Gen.OneOf(",", ";", "\t")).Where((rows, _) => rows.All(row => row.Length == rows[0].Length)).Sample(
            (rows, delimiter) =>
            {
                var text = string.Join("\r\n", rows.Select(row => string.Join(delimiter, row.Select(one => $"\"{one.Replace("\"", "\"\"")}\""))));
                var table = TableText.Read(text, out var fault);
                return fault.Length == 0 && table!.Delimiter == delimiter && table.Rows.Select(row => row.Cells).SequenceEqual(rows, new SameCells());
            },
            iter: 200);
    }

    [Fact]
    public void No_text_makes_it_fail() => Gen.OneOf("\"", ",", ";", "\n", "\r", "a", "\t", "\0", "é").Array[0, 40].Select(string.Concat).Sample(text =>
    {
        var table = TableText.Read(text, out var fault);
        return (table is null) == (fault.Length > 0);
    });

    private sealed class SameCells : IEqualityComparer<string[]>
    {
        public bool Equals(string[]? a, string[]? b) => a!.SequenceEqual(b!);

        public int GetHashCode(string[] cells) => cells.Length;
    }
}
