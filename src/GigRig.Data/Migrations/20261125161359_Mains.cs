using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace GigRig.Data.Migrations
{
    /// <inheritdoc />
    public partial class Mains : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<int>(
                name: "Mains_LeastVolts",
                table: "Supplies",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.AddColumn<int>(
                name: "Mains_MostVolts",
                table: "Supplies",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "Mains_Plug",
                table: "Supplies",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<int>(
                name: "Mains_Watts",
                table: "Supplies",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "VenueSocket",
                table: "EventTypes",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<int>(
                name: "VenueVolts",
                table: "EventTypes",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.AddColumn<int>(
                name: "Power_BatteryMilliampHours",
                table: "Devices",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.AddColumn<bool>(
                name: "Power_Digital",
                table: "Devices",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.AddColumn<int>(
                name: "Mains_LeastVolts",
                table: "Amps",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.AddColumn<int>(
                name: "Mains_MostVolts",
                table: "Amps",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "Mains_Plug",
                table: "Amps",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<int>(
                name: "Mains_Watts",
                table: "Amps",
                type: "INTEGER",
                nullable: true);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropColumn(
                name: "Mains_LeastVolts",
                table: "Supplies");

            migrationBuilder.DropColumn(
                name: "Mains_MostVolts",
                table: "Supplies");

            migrationBuilder.DropColumn(
                name: "Mains_Plug",
                table: "Supplies");

            migrationBuilder.DropColumn(
                name: "Mains_Watts",
                table: "Supplies");

            migrationBuilder.DropColumn(
                name: "VenueSocket",
                table: "EventTypes");

            migrationBuilder.DropColumn(
                name: "VenueVolts",
                table: "EventTypes");

            migrationBuilder.DropColumn(
                name: "Power_BatteryMilliampHours",
                table: "Devices");

            migrationBuilder.DropColumn(
                name: "Power_Digital",
                table: "Devices");

            migrationBuilder.DropColumn(
                name: "Mains_LeastVolts",
                table: "Amps");

            migrationBuilder.DropColumn(
                name: "Mains_MostVolts",
                table: "Amps");

            migrationBuilder.DropColumn(
                name: "Mains_Plug",
                table: "Amps");

            migrationBuilder.DropColumn(
                name: "Mains_Watts",
                table: "Amps");
        }
    }
}
