using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace GigRig.Data.Migrations
{
    /// <inheritdoc />
    public partial class Wiring : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<int>(
                name: "Capacitance",
                table: "Leads",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.AddColumn<bool>(
                name: "Active",
                table: "Instruments",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "Family",
                table: "Instruments",
                type: "TEXT",
                nullable: false,
                defaultValue: "Guitar");

            migrationBuilder.AddColumn<int>(
                name: "PickupCapacitance",
                table: "Instruments",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.AddColumn<int>(
                name: "PickupInductance",
                table: "Instruments",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.AddColumn<int>(
                name: "Volume",
                table: "Instruments",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "InputLevel",
                table: "Devices",
                type: "TEXT",
                nullable: false,
                defaultValue: "Unknown");

            migrationBuilder.AddColumn<bool>(
                name: "WantsBarePickup",
                table: "Devices",
                type: "INTEGER",
                nullable: false,
                defaultValue: false);

            migrationBuilder.AddColumn<string>(
                name: "LoopLevel",
                table: "Amps",
                type: "TEXT",
                nullable: false,
                defaultValue: "Unknown");

            // What owners wrote in their own words before there was a choice.
            migrationBuilder.Sql("UPDATE Instruments SET Family = 'Bass' WHERE Kind LIKE '%bass%'");
            migrationBuilder.Sql("UPDATE Instruments SET Family = 'Keyboard' WHERE Kind LIKE '%key%' OR Kind LIKE '%piano%' OR Kind LIKE '%organ%' OR Kind LIKE '%synth%'");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropColumn(
                name: "Capacitance",
                table: "Leads");

            migrationBuilder.DropColumn(
                name: "Active",
                table: "Instruments");

            migrationBuilder.DropColumn(
                name: "Family",
                table: "Instruments");

            migrationBuilder.DropColumn(
                name: "PickupCapacitance",
                table: "Instruments");

            migrationBuilder.DropColumn(
                name: "PickupInductance",
                table: "Instruments");

            migrationBuilder.DropColumn(
                name: "Volume",
                table: "Instruments");

            migrationBuilder.DropColumn(
                name: "InputLevel",
                table: "Devices");

            migrationBuilder.DropColumn(
                name: "WantsBarePickup",
                table: "Devices");

            migrationBuilder.DropColumn(
                name: "LoopLevel",
                table: "Amps");
        }
    }
}
